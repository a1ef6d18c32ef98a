import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { historyFrom } from '../../src/cure/index.js';
import type { Mass, MassFlow, Temperature, Time } from '../../src/quantity/index.js';
import { placingTime } from '../../src/resin/index.js';
import { type EnteredHour, type ScheduledStep, type StepLink, schedule } from '../../src/site/index.js';
import { clockAfterPots, endByChains, valueAt } from './work-hours.js';

const run = <T>(property: fc.IProperty<T>) => fc.assert(property, { seed: 20261125, numRuns: 200 });
const span = (min: number, max: number) => fc.double({ min, max, noNaN: true, noDefaultInfinity: true });
const near = (found: number, wanted: number): void => {
  expect(Math.abs(found - wanted)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(wanted)));
};

/** Up to eight steps, each waiting for some of those before it. */
const work = fc
  .array(fc.record({ duration: span(0, 1e5), waits: fc.array(fc.nat(), { maxLength: 3 }) }), {
    minLength: 2,
    maxLength: 8,
  })
  .map((drawn) => {
    const steps: ScheduledStep[] = drawn.map(({ duration }, at) => ({ name: `s${at}`, duration: duration as Time }));
    const links: StepLink[] = drawn.flatMap(({ waits }, at) =>
      at === 0 ? [] : [...new Set(waits.map((each) => each % at))].map((on) => ({ step: `s${at}`, after: `s${on}` })),
    );
    return { steps, links };
  });
const lengthened = (steps: readonly ScheduledStep[], at: number, by: number): ScheduledStep[] =>
  steps.map((step, index) => (index === at ? { name: step.name, duration: (step.duration + by) as Time } : step));
const lastOf = (steps: readonly ScheduledStep[], links: readonly StepLink[]): number =>
  Math.max(...steps.map(({ name }) => endByChains(name, steps, links)));

describe("the hours of the work 'site/schedule' against every chain of steps", () => {
  it('end each step with the longest chain that leads to it', () => {
    run(
      fc.property(work, ({ steps, links }) => {
        const { rows, end } = schedule({ steps, links });
        for (const { name, endsAt } of rows) near(endsAt, endByChains(name, steps, links));
        near(end, lastOf(steps, links));
      }),
    );
  });

  it('count from a real hour where one was entered', () => {
    run(
      fc.property(work, fc.nat(), span(0, 3e5), ({ steps, links }, which, at) => {
        const name = `s${which % steps.length}`;
        const entered: EnteredHour[] = [{ step: name, at: at as Time }];
        for (const row of schedule({ steps, links, entered }).rows) {
          near(row.endsAt, endByChains(row.name, steps, links, { [name]: at }));
        }
      }),
    );
  });

  it('let a step take its slack longer and no more', () => {
    run(
      fc.property(work, fc.nat(), ({ steps, links }, which) => {
        const at = which % steps.length;
        const { rows, end } = schedule({ steps, links });
        const slack = rows[at]?.slack ?? 0;
        near(lastOf(lengthened(steps, at, slack), links), end);
        near(lastOf(lengthened(steps, at, slack + 100), links), end + 100);
      }),
    );
  });

  it('move the last step by as much as a critical one is lengthened', () => {
    run(
      fc.property(work, ({ steps, links }) => {
        const last = steps.at(-1)?.name ?? '';
        const before = endByChains(last, steps, links);
        schedule({ steps, links }).rows.forEach(({ critical }, at) => {
          if (critical) near(endByChains(last, lengthened(steps, at, 100), links), before + 100);
        });
      }),
    );
  });
});

describe("a history from a later hour 'cure/history-from' against looking it up", () => {
  it('holds at every second what the whole history holds then', () => {
    const stretch = fc.record({ duration: fc.integer({ min: 1, max: 20_000 }), temperature: span(270, 320) });
    run(
      fc.property(
        fc.array(stretch, { minLength: 1, maxLength: 6 }),
        fc.integer({ min: 0, max: 60_000 }),
        fc.array(span(0, 1), { minLength: 5, maxLength: 5 }),
        (drawn, start, shares) => {
          const steps = drawn.map(({ duration, temperature }) => {
            return { duration: duration as Time, temperature: temperature as Temperature };
          });
          const whole = drawn.reduce((sum, { duration }) => sum + duration, 0);
          const found = historyFrom({ steps, start: start as Time });
          expect(found.left).toBe(Math.max(0, whole - start));
          for (const share of shares) {
            const second = Math.floor(share * found.left);
            expect(valueAt(found.steps, second)?.temperature).toBe(valueAt(steps, start + second)?.temperature);
          }
        },
      ),
    );
  });
});

describe("the time to mix and place 'resin/placing-time'", () => {
  it('is the clock after the pots, one after the other', () => {
    run(
      fc.property(
        fc.integer({ min: 1, max: 12 }),
        span(0.1, 30),
        span(1e-4, 0.02),
        span(0, 600),
        (batches, mass, rate, mixing) => {
          const found = placingTime({
            batches,
            mass: mass as Mass,
            placingRate: rate as MassFlow,
            mixingTime: mixing as Time,
          });
          near(found, clockAfterPots(batches, mass, rate, mixing));
        },
      ),
    );
  });
});

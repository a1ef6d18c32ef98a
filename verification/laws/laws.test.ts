import { describe, expect, it } from 'vitest';
import { openExceptions } from './open.js';
import { outputsApart } from './outputs/index.js';
import { readLawsSummary, Tally } from './summary.js';
import { outcomeOf } from './tally.js';
import { worsenings } from './worse/index.js';

/** Laws of whole designs over 2,600 drawn cases, shared among the ways in which a case gets worse. */

const CASES = 2600;
const each = Math.ceil(CASES / worsenings.length);
const tally = new Tally();

/** Laws about what few drawn cases have: the long run meets them. */
const rarely = (name: string): boolean =>
  /sheet|collar|bands|putty|seal|long-term|ground water|free span|cycles|gas that leaks|warm laminate|profile|effective area|long-term tests|radius|flow stress/u.test(
    name,
  );

describe('a whole design', () => {
  it.each(worsenings.map((law, index) => [law.name, law, index] as const))(
    'is never better for %s, and holds what it claims',
    (_, law, index) => {
      let told = 0;
      for (let draw = index * each; draw < (index + 1) * each; draw++) {
        const outcome = outcomeOf(draw, [law]);
        tally.add(outcome);
        const broken = outcome.violations.filter(({ open }) => open === undefined);
        expect(broken).toEqual([]);
        const [after] = outcome.worsened;
        const compares = law.demands === undefined || law.demands === 'the same';
        const counts = compares ? after?.after?.verdict === 'designed' : after?.applies === true;
        if (outcome.design?.verdict === 'designed' && counts) told += 1;
        if (draw % 16 === 0 && outcome.design?.verdict === 'designed') {
          expect(outputsApart(outcome.design), `draw ${draw}`).toBeUndefined();
        }
      }
      // A law that meets no design says nothing.
      if (!rarely(law.name)) expect(told).toBeGreaterThan(0);
    },
  );

  it('is drawn often enough of every kind', () => {
    const { designed, verdicts, cases } = tally.summary();
    expect(cases).toBe(each * worsenings.length);
    expect((verdicts['designed'] ?? 0) / cases).toBeGreaterThan(0.45);
    for (const [group, counts] of Object.entries(designed))
      for (const [name, count] of Object.entries(counts)) expect(count, `${group} ${name}`).toBeGreaterThan(20);
    expect(Object.keys(designed['method'] ?? {})).toHaveLength(4);
  });
});

describe('the long run of the laws', () => {
  const summary = readLawsSummary();

  it('broke none that is not named, and made a hundred designs of each kind', () => {
    expect(summary?.violations).toBe(0);
    expect(summary?.cases).toBe(100_000);
    for (const group of ['defect stated', 'designed as', 'method', 'form', 'basis'])
      for (const [name, count] of Object.entries(summary?.designed[group] ?? {}))
        expect(count, `${group} ${name}`).toBeGreaterThanOrEqual(100);
    expect(Object.keys(summary?.laws ?? {}).toSorted()).toEqual(worsenings.map(({ name }) => name).toSorted());
  });

  it('met no exception but those that are named, and told every law of some design', () => {
    const named = openExceptions.map(({ open }) => open);
    for (const { because } of Object.values(summary?.open ?? {})) expect(named).toContain(because);
    for (const [law, { pairs }] of Object.entries(summary?.laws ?? {})) expect(pairs, law).toBeGreaterThan(100);
  });
});

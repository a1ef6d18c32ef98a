import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Designed } from '../../src/repair/index.js';
import { run } from '../properties/spans.js';
import { designOf, madeOf } from './answers.js';
import { leak, loss, withPaths } from './cases.js';

/** What is mixed at once has to be laid within 0.8 of its working time: a design says so in one place. */

const resinOf = ({ mixes: { laminateResin } }: Designed) => {
  if (laminateResin === 'none') throw new Error('no resin is mixed');
  return laminateResin;
};
const fillerOf = ({ mixes: { filler } }: Designed) => {
  if (filler === 'none') throw new Error('no filler is mixed');
  return filler;
};

describe('a batch of resin', () => {
  it.each([
    ['wall loss', loss],
    ['leak', leak],
  ])('lies within the time that is allowed, in the example of a %s', (_, file) => {
    const { rolls } = madeOf(file);
    expect(rolls.fits).toBe(true);
    expect(rolls.remedies).toBeUndefined();
    expect(rolls.allowedTime ?? 0).toBeCloseTo(0.8 * (rolls.workingTime ?? 0), 9);
  });

  it('is as small as the slower of pot and tape asks for, and no smaller: one batch less does not lie in time', () => {
    run(
      fc.property(fc.integer({ min: 2, max: 60 }), fc.integer({ min: 30, max: 400 }), (metresAMinute, gramsAMinute) => {
        const speed = metresAMinute / 10;
        const made = madeOf(
          withPaths(loss, {
            'crew.layingSpeed': `${speed} m/min`,
            'resin.rate': `${gramsAMinute / 6e4} kg/s`,
          }),
        );
        const { batches, batchMass, mass } = resinOf(made);
        const { rolls, wrap } = made;
        const left = (rolls.allowedTime ?? 0) - 300;
        const length = wrap.form === 'tape' ? wrap.tapeLength : wrap.sheetLength;
        const fits = (count: number): boolean =>
          length / count <= (left * speed * (1 + 1e-9)) / 60 &&
          mass / count <= ((left * gramsAMinute) / 6e4) * (1 + 1e-9) &&
          mass / count <= 2 * (1 + 1e-9);
        expect(rolls.fits).toBe(true);
        expect(fits(batches)).toBe(true);
        expect(batches === 1 || !fits(batches - 1)).toBe(true);
        expect(batchMass * batches).toBeCloseTo(mass, 9);
      }),
    );
  });

  it('that no size of it makes fit says so, with what would pass', () => {
    const { rolls } = madeOf(withPaths(loss, { 'crew.soakTime': '25 min' }));
    expect(rolls.fits).toBe(false);
    expect(rolls.remedies?.longestCharge).toBeUndefined();
    expect(rolls.remedies?.coolerThan).toBeGreaterThan(0);
  });

  it('is sized by its pot alone where no crew is stated, and whether it fits is not said', () => {
    const made = madeOf(withPaths(loss, { crew: undefined }));
    expect(resinOf(made).batches).toBe(2);
    expect(made.rolls.fits).toBeUndefined();
  });
});

describe('a batch of filler', () => {
  it('is placed within 0.8 of its working time, mixing and all', () => {
    const made = madeOf(withPaths(loss, { 'filler.rate': '0.0012 kg/s' }));
    const { cures } = made;
    const working = cures.filler === 'none' ? 0 : cures.filler.workingTime;
    const { mass, batches, limitedBy } = fillerOf(made);
    expect(mass / batches).toBeLessThanOrEqual(0.0012 * (0.8 * working - 300) * (1 + 1e-9));
    expect([batches, limitedBy]).toEqual([2, 'working time']);
  });
});

describe('more rolls than are listed', () => {
  it('are each soaked: the wrap takes longer by a soaking for each', () => {
    const many = (soakTime: string) =>
      designOf(
        withPaths(loss, {
          resin: 'none',
          'wrap.rollLength': '0.1 m',
          'wrap.width': '50 mm',
          'crew.soakTime': soakTime,
        }),
      );
    const [short, long] = [many('10 s'), many('20 s')];
    const count = short.wrap?.rolls ?? 0;
    expect(count).toBeGreaterThan(500);
    expect(short.rolls?.rolls).toEqual([]);
    expect(((long.rolls?.wrapTime ?? 0) - (short.rolls?.wrapTime ?? 0)) / 10).toBeCloseTo(count, 6);
  });
});

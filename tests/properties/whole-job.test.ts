import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gauge, type Length, length, ratio, stress, temperature } from '../../src/quantity/index.js';
import { type Designed, designRepair, type RepairCase } from '../../src/repair/index.js';
import { listed, timeOf } from '../repair/by-use.js';
import { atWork, leaking, partWall } from '../repair/example-case.js';

/** What may never happen to a whole design when one thing gets worse; those of thickness by default are in tests/repair. */

const runs = { seed: 20261125, numRuns: 200 };
const span = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const rising = (min: number, max: number) =>
  fc.tuple(span(min, max), span(min, max)).map(([a, b]) => [Math.min(a, b), Math.max(a, b)] as const);

/** A draw whose case is not designed is drawn again. */
function designed(repairCase: RepairCase): Designed {
  const design = designRepair(repairCase);
  if (design.verdict === 'designed') return design;
  fc.pre(false);
  throw new Error(`not designed: ${design.verdict}`);
}
const thickness = (repairCase: RepairCase): number => designed(repairCase).laminate.thickness.value;

const atPressure = (repairCase: RepairCase, MPa: number): RepairCase => ({
  ...repairCase,
  service: { ...repairCase.service, designPressure: gauge.MPa(MPa) },
});

describe('a hotter site', () => {
  it.each([
    ['part-wall metal loss', partWall],
    ['a leak', leaking],
  ] as const)('never lengthens a cure wait nor a working time of %s', (_, repairCase) => {
    fc.assert(
      fc.property(rising(10, 40), ([cool, warm]) => {
        const at = (degrees: number) =>
          designed({
            ...repairCase,
            site: {
              ...repairCase.site,
              pipeTemperature: temperature.degC(degrees),
              airTemperature: temperature.degC(degrees),
            },
          });
        const [before, after] = [at(cool), at(warm)];
        expect(listed(before.cures).map(([use]) => use)).toEqual(['filler', 'laminate']);
        expect(listed(after.cures).map(([use]) => use)).toEqual(['filler', 'laminate']);
        listed(before.cures).forEach(([, cure], index) => {
          expect(listed(after.cures)[index]?.[1].workingTime).toBeLessThanOrEqual(cure.workingTime);
        });
        for (const wait of ['filler-wait', 'cure'] as const) {
          expect(timeOf(after.timeline, wait)).toBeLessThanOrEqual(timeOf(before.timeline, wait));
        }
      }),
      runs,
    );
  });
});

describe('more pressure', () => {
  it('never takes fewer plies, less tape or less resin', () => {
    fc.assert(
      fc.property(rising(0.1, 8), ([low, high]) => {
        const at = (MPa: number) => {
          const { laminate, wrap, mixes } = designed(atPressure(partWall, MPa));
          const resin = mixes.laminateResin;
          if (wrap.form !== 'tape' || resin === 'none') throw new Error('expected tape and resin');
          return [laminate.plies, wrap.tapeLength, resin.mass];
        };
        const [before, after] = [at(low), at(high)];
        before.forEach((amount, index) => {
          expect(after[index]).toBeGreaterThanOrEqual(amount);
        });
      }),
      runs,
    );
  });
});

describe('a thinner wall that still counts as part-wall', () => {
  const strong = {
    ...partWall.laminate,
    longTermStrength: { strength: stress.MPa(120), test: '1000 h survival', testTemperature: temperature.degC(90) },
  } as const;
  const withWall = (method: NonNullable<RepairCase['repair']['method']>, MPa: number, wall: number): RepairCase => ({
    ...atPressure(partWall, MPa),
    laminate: strong,
    defect: { ...partWall.defect, remainingWall: length.mm(wall) },
    repair: { ...partWall.repair, method },
  });

  it.each(['substrate ignored', 'substrate sharing load', 'substrate yielded', 'long-term strength'] as const)(
    'never lowers the laminate by the method %s',
    (method) => {
      fc.assert(
        fc.property(rising(1.05, 8), span(1, 12), ([thin, thick], MPa) => {
          expect(thickness(withWall(method, MPa, thin))).toBeGreaterThanOrEqual(
            thickness(withWall(method, MPa, thick)),
          );
        }),
        runs,
      );
    },
  );
});

describe('a worse defect', () => {
  it('never thins the laminate when its hole is larger', () => {
    fc.assert(
      fc.property(rising(1, 45), span(0.2, 1.5), ([small, large], MPa) => {
        const at = (hole: number): number =>
          thickness({ ...atPressure(leaking, MPa), defect: { ...leaking.defect, holeDiameter: length.mm(hole) } });
        expect(at(large)).toBeGreaterThanOrEqual(at(small));
      }),
      runs,
    );
  });

  it('never shortens the repair when it is longer', () => {
    fc.assert(
      fc.property(rising(10, 400), ([short, long]) => {
        const at = (axialLength: number): Length => {
          const { extent } = designed({
            ...partWall,
            defect: { ...partWall.defect, axialLength: length.mm(axialLength) },
          });
          return extent.totalLength;
        };
        expect(at(long)).toBeGreaterThanOrEqual(at(short));
      }),
      runs,
    );
  });
});

describe('pressure during application', () => {
  it('never thins the laminate by the sharing form', () => {
    fc.assert(
      fc.property(rising(0, 3), span(3, 8), ([less, more], MPa) => {
        const at = (live: number): number =>
          thickness({
            ...atPressure(partWall, MPa),
            line: atWork(gauge.MPa(live)),
            repair: { ...partWall.repair, method: 'substrate sharing load' },
          });
        expect(at(more)).toBeGreaterThanOrEqual(at(less));
      }),
      runs,
    );
  });
});

describe('more waste', () => {
  it('never takes fewer rolls or kits', () => {
    fc.assert(
      fc.property(rising(0, 60), ([less, more]) => {
        const at = (percent: number): number[] => {
          const { wrap, mixes } = designed({
            ...partWall,
            wrap: { ...partWall.wrap, waste: ratio.percent(percent) },
            resin: { ...(partWall.resin as Exclude<RepairCase['resin'], 'none'>), waste: ratio.percent(percent) },
          });
          return [wrap.rolls, ...listed(mixes).map(([, { kits }]) => kits)];
        };
        const [before, after] = [at(less), at(more)];
        before.forEach((count, index) => {
          expect(after[index]).toBeGreaterThanOrEqual(count);
        });
      }),
      runs,
    );
  });
});

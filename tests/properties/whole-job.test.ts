import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gauge, type Length, length, ratio, stress, temperature } from '../../src/quantity/index.js';
import { designRepair, type RepairCase, type RepairDesign } from '../../src/repair/index.js';
import { leaking, partWall } from '../repair/example-case.js';
import { span } from './spans.js';

/** What may never happen to a whole design when one thing gets worse; those of thickness by default are in tests/repair. */

const runs = { seed: 20261125, numRuns: 200 };
const rising = (min: number, max: number) =>
  fc.tuple(span(min, max), span(min, max)).map(([a, b]) => [Math.min(a, b), Math.max(a, b)] as const);

/** A draw whose case is not designed is drawn again. */
function designed(repairCase: RepairCase): RepairDesign & { readonly laminate: NonNullable<RepairDesign['laminate']> } {
  const design = designRepair(repairCase);
  fc.pre(design.verdict === 'designed');
  if (design.laminate === undefined) throw new Error('designed without a laminate');
  return { ...design, laminate: design.laminate };
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
          }).cures;
        const [before, after] = [at(cool), at(warm)];
        expect(after.length).toBe(before.length);
        expect(before.length).toBeGreaterThan(0);
        before.forEach((cure, index) => {
          expect(after[index]?.wait).toBeLessThanOrEqual(cure.wait);
          expect(after[index]?.workingTime).toBeLessThanOrEqual(cure.workingTime);
        });
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
          const resin = mixes.find(({ use }) => use === 'laminate resin');
          if (wrap?.form !== 'tape' || resin === undefined) throw new Error('expected tape and resin');
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
    longTermStrength: { strength: stress.MPa(120), test: '1000 h survival' },
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

  it('never lowers the laminate that takes credit for pressure during application', () => {
    fc.assert(
      fc.property(rising(2, 8), span(4, 20), span(0, 4), ([thin, thick], MPa, live) => {
        const at = (wall: number): number => {
          const plain = withWall('substrate yielded', MPa, wall);
          const pressureDuringApplication = gauge.MPa(Math.min(live, MPa));
          return thickness({
            ...plain,
            repair: { ...plain.repair, pressureDuringApplication, creditPressureDuringApplication: true },
          });
        };
        expect(at(thin)).toBeGreaterThanOrEqual(at(thick) * (1 - 1e-12));
      }),
      runs,
    );
  });
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
          if (extent === undefined) throw new Error('designed without an extent');
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
            repair: {
              ...partWall.repair,
              method: 'substrate sharing load',
              pressureDuringApplication: gauge.MPa(live),
            },
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
          return [wrap?.rolls ?? 0, ...mixes.map(({ kits }) => kits)];
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

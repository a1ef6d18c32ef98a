import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { isCalculationError } from '../../src/formula/index.js';
import {
  corrosionRate,
  energyReleaseRate,
  gauge,
  type Length,
  length,
  temperature,
  time,
} from '../../src/quantity/index.js';
import { designRepair, type RepairCase, type RepairDesign } from '../../src/repair/index.js';
import { atWork, leaking, partWall } from './example-case.js';
import { tapeModuli } from './tape-moduli.js';

const seeded = { seed: 20261125, numRuns: 300 };

const withPressure = (repairCase: RepairCase, MPa: number): RepairCase => ({
  ...repairCase,
  service: { ...repairCase.service, designPressure: gauge.MPa(MPa) },
});
const withWall = (repairCase: RepairCase, wall: Length): RepairCase => ({
  ...repairCase,
  defect: { ...repairCase.defect, remainingWall: wall },
});
const thicknessOf = (design: RepairDesign): number => {
  if (design.laminate === undefined) throw new Error(`no laminate: ${design.verdict}`);
  return design.laminate.thickness.value;
};

describe('a part-wall case', () => {
  // 100 mm of tape, half overlapped, on the bare pipe: 2.8 degrees off the hoop direction.
  const laid = tapeModuli({ hoop: 24_000, axial: 13_000, shear: 3000, poisson: 0.12 }, 100, 0.5, 323.9);
  const design = designRepair(partWall);

  it('is designed', () => {
    expect(design.verdict).toBe('designed');
    expect(design.reasons).toEqual([]);
    expect(design.missing).toEqual([]);
  });

  it('takes the hoop thickness with the pipe ignored, over the filler, with no relief by the end load', () => {
    // Hand calculation: T_m = 110 - 20 = 90 degC, x = 40 K; class 3, 20 years; laminate and pipe expand alike round the pipe.
    const fT = 6e-5 * 40 ** 2 + 0.001 * 40 + 0.7014;
    const strain = fT * 0.0025;
    const diameter = 323.9 + 2 * 4;
    const hand = (4 * diameter) / (2 * strain * laid.hoop);
    const hoop = design.laminate?.thickness.candidates.find(({ criterion }) => criterion.startsWith('hoop'));
    expect(length.inMm(hoop?.value as Length)).toBeCloseTo(hand, 9);
  });

  it('takes the axial thickness by the end load of the closed pipe, less the Poisson relief of the hoop load', () => {
    const fT = 6e-5 * 40 ** 2 + 0.001 * 40 + 0.7014;
    const strain = fT * 0.0025 - Math.abs((50 - 20) * (12e-6 - 20e-6));
    const hand = (1 / strain) * ((4 * 323.9) / 4 / laid.axial - ((4 * 323.9) / 2) * (0.12 / laid.hoop));
    const axial = design.laminate?.thickness.candidates.find(({ criterion }) => criterion.startsWith('axial'));
    expect(length.inMm(axial?.value as Length)).toBeCloseTo(hand, 9);
  });

  it('lays whole plies, at least the thickness that governs', () => {
    const { plies, laidThickness, thickness } = design.laminate as NonNullable<RepairDesign['laminate']>;
    expect(plies).toBe(Math.ceil(thickness.value / 0.0008));
    expect(laidThickness).toBeGreaterThanOrEqual(thickness.value);
  });

  it('resists at least its design pressure with the thickness that is laid', () => {
    expect(design.laminate?.resistance.value).toBeGreaterThanOrEqual(partWall.service.designPressure);
  });

  it('shows the other thickness methods beside the chosen one', () => {
    expect(design.laminate?.alternatives.map(({ criterion }) => criterion)).toEqual([
      'substrate sharing load',
      'substrate yielded',
      'long-term strength',
      'hoop line of substrate ignored, with relief by the end load',
      'hoop line of substrate yielded, with credit for pressure during application',
    ]);
  });

  it('reaches past the defect by the governing overlap and the taper at both ends', () => {
    const { overlap, taper, defectLength, totalLength } = design.extent as NonNullable<RepairDesign['extent']>;
    expect(totalLength).toBeCloseTo(2 * overlap.value + 2 * taper + defectLength, 12);
    expect(overlap.value).toBe(Math.max(...overlap.candidates.map(({ value }) => value)));
  });

  it('is wrapped over at least its whole length, with at least its plies', () => {
    const wrap = design.wrap;
    if (wrap?.form !== 'tape') throw new Error('expected a tape');
    expect(wrap.overallLength).toBeGreaterThanOrEqual(design.extent?.totalLength as number);
    expect(wrap.layers).toBeGreaterThanOrEqual(design.laminate?.plies as number);
  });

  it('is the same design to the bit with and without the recorder', () => {
    const { record, options, ...recorded } = designRepair(partWall, { record: true });
    const { options: _, ...plain } = design;
    expect(recorded).toEqual(plain);
    expect(record?.length).toBeGreaterThan(20);
  });
});

describe('a leak', () => {
  const design = designRepair(leaking);

  it('takes the largest of hoop, axial and leak', () => {
    expect(design.verdict).toBe('designed');
    const { candidates, value } = (design.laminate as NonNullable<RepairDesign['laminate']>).thickness;
    expect(candidates.map(({ criterion }) => criterion)).toEqual([
      'hoop strain, substrate ignored',
      'axial strain, substrate ignored',
      'leak through the hole',
      'size of the hole',
    ]);
    expect(value).toBe(Math.max(...candidates.map((candidate) => candidate.value)));
  });

  it('is designed for the hole at the end of life, never less than 15 mm', () => {
    expect(length.inMm(design.found?.holeAtEndOfLife as Length)).toBeCloseTo(5 + 2 * 0.05 * 20, 9);
    expect(length.inMm(design.found?.designHole as Length)).toBe(15);
  });

  it('is refused with the ceiling when no thickness holds the pressure', () => {
    const weak = { ...leaking, laminate: { ...leaking.laminate, energyReleaseRate: energyReleaseRate.JPerM2(1) } };
    const refused = designRepair(weak);
    expect(refused.verdict).toBe('not repairable');
    const [reason] = refused.reasons;
    expect(reason?.text).toContain('no thickness');
    expect(reason?.limit?.value).toBeLessThan(reason?.found?.value as number);
  });

  it('may not count on the pipe by the method that the case names', () => {
    const named = designRepair({ ...leaking, repair: { ...leaking.repair, method: 'substrate yielded' } });
    expect(named.verdict).toBe('not repairable');
    expect(named.reasons[0]?.text).toContain('metal that is not there');
  });

  it('counts a used-up wall as a hole over the whole defect, unless an inspector expects a smaller one', () => {
    const used = (change: Partial<RepairCase['defect']>): RepairDesign =>
      designRepair({
        ...withPressure(partWall, 1),
        defect: {
          ...partWall.defect,
          remainingWall: length.mm(2),
          axialLength: length.mm(30),
          circumferentialWidth: length.mm(40),
          cause: 'internal corrosion',
          growth: { depth: corrosionRate.mmPerYear(0.1), length: corrosionRate.mmPerYear(0) },
          ...change,
        },
      });
    expect(used({}).found?.throughWall).toBe(true);
    expect(length.inMm(used({}).found?.designHole as Length)).toBeCloseTo(50, 9);
    const expected = used({ holeAtEndOfLife: length.mm(20) });
    expect(length.inMm(expected.found?.designHole as Length)).toBeCloseTo(20, 9);
    expect(expected.warnings.some(({ text }) => text.includes('inspector'))).toBe(true);
  });

  it('refuses a used-up wall that is long and narrow, which is a slot', () => {
    const slot = designRepair({
      ...withPressure(partWall, 1),
      defect: {
        ...partWall.defect,
        remainingWall: length.mm(0.5),
        axialLength: length.mm(300),
        circumferentialWidth: length.mm(20),
      },
    });
    expect(slot.verdict).toBe('not covered');
  });
});

describe('what this version does not design for', () => {
  const defects = ['through-wall slot', 'crack', 'dent', 'gouge', 'lamination', 'bulge', 'seam defect'] as const;
  test.each(defects)('a %s is not covered, and said so', (kind) => {
    const design = designRepair({ ...partWall, defect: { ...partWall.defect, kind } });
    expect(design.verdict).toBe('not covered');
    expect(design.reasons[0]?.text).toContain(kind);
    expect(design.laminate).toBeUndefined();
  });

  const fittings = ['bend', 'tee', 'reducer', 'flange', 'nozzle', 'weld'] as const;
  test.each(fittings)('a %s is not covered', (fitting) => {
    expect(designRepair({ ...partWall, fitting }).verdict).toBe('not covered');
  });

  it('names every reason at once', () => {
    const design = designRepair({ ...partWall, fitting: 'bend', defect: { ...partWall.defect, kind: 'crack' } });
    expect(design.reasons).toHaveLength(2);
  });
});

describe('what is missing', () => {
  const without: readonly [string, RepairCase][] = [
    ['laminate.glassTransition', { ...partWall, laminate: { ...partWall.laminate, glassTransition: undefined } }],
    ['laminate.strainToFailure', { ...partWall, laminate: { ...partWall.laminate, strainToFailure: undefined } }],
    ['laminate.lapShearStrength', { ...partWall, laminate: { ...partWall.laminate, lapShearStrength: undefined } }],
    ['laminate.hoopExpansion', { ...partWall, laminate: { ...partWall.laminate, hoopExpansion: undefined } }],
    ['laminate.axialExpansion', { ...partWall, laminate: { ...partWall.laminate, axialExpansion: undefined } }],
    ['laminate.energyReleaseRate', { ...leaking, laminate: { ...leaking.laminate, energyReleaseRate: undefined } }],
    ['laminate.shearModulus', { ...leaking, laminate: { ...leaking.laminate, shearModulus: undefined } }],
    ['defect.holeDiameter', { ...leaking, defect: { ...leaking.defect, holeDiameter: undefined } }],
    ['defect.growth', { ...leaking, defect: { ...leaking.defect, growth: 'none' } }],
    ['seal', { ...leaking, line: atWork(gauge.bar(0.2)) }],
    ['laminate.longTermStrength', { ...partWall, repair: { ...partWall.repair, method: 'long-term strength' } }],
  ];
  test.each(without)('without %s the design asks for it and says who has it', (field, repairCase) => {
    const design = designRepair(repairCase);
    expect(design.verdict).toBe('needs input');
    const missing = design.missing.find((entry) => entry.field === field);
    expect(missing?.why.length).toBeGreaterThan(20);
    expect(missing?.askWhom.length).toBeGreaterThan(5);
  });
});

describe('limits', () => {
  it('refuses a design temperature above the limit of the laminate', () => {
    const design = designRepair({
      ...partWall,
      service: { ...partWall.service, designTemperature: temperature.degC(91) },
    });
    expect(design.verdict).toBe('not repairable');
    expect(design.reasons[0]?.limit?.value).toBeCloseTo(273.15 + 90, 9);
  });

  it('refuses a pressure and contents beyond the class', () => {
    const design = designRepair({
      ...withPressure(partWall, 1.2),
      repair: { ...partWall.repair, class: 1 },
      service: {
        ...partWall.service,
        designPressure: gauge.MPa(1.2),
        designTemperature: temperature.degC(30),
        hazards: ['flammable'],
      },
    });
    expect(design.verdict).toBe('not repairable');
    expect(design.reasons.map(({ text }) => text).join(' ')).toMatch(/pressure.*flammable/s);
  });

  it('refuses a life longer than the rule set covers, as a verdict', () => {
    const design = designRepair({ ...leaking, repair: { ...leaking.repair, life: time.year(21) } });
    expect(['not repairable', 'not covered']).toContain(design.verdict);
  });

  it('warns between the two recalled minima of the bond and refuses below both', () => {
    const bond = (MPa: number): RepairDesign =>
      designRepair({ ...partWall, laminate: { ...partWall.laminate, lapShearStrength: (MPa * 1e6) as never } });
    expect(bond(4.5).warnings.some(({ text }) => text.includes('lap shear'))).toBe(true);
    expect(bond(3.9).verdict).toBe('not repairable');
  });

  it('refuses a laminate as thick as a twelfth of the pipe', () => {
    const design = designRepair(withPressure(partWall, 30));
    expect(design.verdict).toBe('not repairable');
    expect(design.reasons.some(({ text }) => text.includes('too thick'))).toBe(true);
  });
});

describe('the safe choice is the default', () => {
  it('shows beside its thickness what relief by the end load and credit for pressure would save, and takes neither', () => {
    const high = { ...withPressure(partWall, 16), line: atWork(gauge.MPa(3)) };
    const { laminate } = designRepair({ ...high, repair: { ...partWall.repair, method: 'substrate yielded' } });
    const beside = (criterion: string): number => {
      const found = laminate?.alternatives.find((each) => each.criterion.includes(criterion));
      return found !== undefined && 'value' in found ? found.value : Number.NaN;
    };
    const ignored = designRepair(high).laminate?.thickness.candidates[0]?.value as number;
    expect(beside('relief by the end load')).toBeLessThan(ignored);
    expect(beside('credit for pressure')).toBeLessThan(laminate?.thickness.candidates[0]?.value as number);
    expect(laminate?.thickness.candidates.map(({ criterion }) => criterion).join()).not.toMatch(/relief|credit/u);
  });

  it('pressure during application never thins the yielded form', () => {
    const yielded = { ...partWall.repair, method: 'substrate yielded' } as const;
    const high = { ...withPressure(partWall, 16), line: atWork(gauge.MPa(3)) };
    const plain = designRepair({ ...high, line: atWork(gauge.MPa(0)), repair: yielded });
    const live = designRepair({ ...high, repair: yielded });
    expect(live.laminate?.thickness).toEqual(plain.laminate?.thickness);
  });

  it('pressure during application thickens the sharing form', () => {
    const sharing = (MPa: number): number =>
      thicknessOf(
        designRepair({
          ...withPressure(partWall, 6),
          line: atWork(gauge.MPa(MPa)),
          repair: { ...partWall.repair, method: 'substrate sharing load' },
        }),
      );
    expect(sharing(1)).toBeGreaterThan(sharing(0));
  });
});

describe('properties', () => {
  it('more pressure never thins the laminate', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 6, noNaN: true }),
        fc.double({ min: 0, max: 2, noNaN: true }),
        (P, more) => {
          expect(thicknessOf(designRepair(withPressure(partWall, P + more)))).toBeGreaterThanOrEqual(
            thicknessOf(designRepair(withPressure(partWall, P))),
          );
        },
      ),
      seeded,
    );
  });

  it('with the default method a thinner wall never lowers the laminate, on both sides of the 1 mm switch', () => {
    const withHole = { ...partWall, defect: { ...partWall.defect, holeAtEndOfLife: length.mm(20) } };
    const at = withPressure(withHole, 1);
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 8, noNaN: true }),
        fc.double({ min: 0, max: 4, noNaN: true }),
        (wall, less) => {
          const thin = thicknessOf(designRepair(withWall(at, length.mm(Math.max(0.05, wall - less)))));
          expect(thin).toBeGreaterThanOrEqual(thicknessOf(designRepair(withWall(at, length.mm(wall)))));
        },
      ),
      seeded,
    );
  });

  it('a longer life never thins the laminate', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 20, noNaN: true }),
        fc.double({ min: 0.5, max: 20, noNaN: true }),
        (a, b) => {
          const at = (life: number): number =>
            thicknessOf(designRepair({ ...leaking, repair: { ...leaking.repair, life: time.year(life) } }));
          expect(at(Math.max(a, b))).toBeGreaterThanOrEqual(at(Math.min(a, b)));
        },
      ),
      seeded,
    );
  });

  it('a hotter design never thins the laminate', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 20, max: 79, noNaN: true }),
        fc.double({ min: 0, max: 40, noNaN: true }),
        (T, hotter) => {
          const at = (degrees: number): number =>
            thicknessOf(
              designRepair({
                ...leaking,
                service: { ...leaking.service, designTemperature: temperature.degC(degrees) },
              }),
            );
          expect(at(Math.min(80, T + hotter))).toBeGreaterThanOrEqual(at(T));
        },
      ),
      seeded,
    );
  });

  it('never answers with a number that is not finite', () => {
    fc.assert(
      fc.property(
        fc.record({
          P: fc.double({ min: 0, max: 50, noNaN: true }),
          D: fc.double({ min: 10, max: 3000, noNaN: true }),
          wall: fc.double({ min: 0.1, max: 60, noNaN: true }),
          left: fc.double({ min: 0, max: 60, noNaN: true }),
          length: fc.double({ min: 0.1, max: 5000, noNaN: true }),
          ply: fc.double({ min: 0.05, max: 5, noNaN: true }),
          roll: fc.double({ min: 0.1, max: 100, noNaN: true }),
          T: fc.double({ min: -50, max: 150, noNaN: true }),
          hole: fc.double({ min: 0.1, max: 500, noNaN: true }),
          leaks: fc.boolean(),
        }),
        ({ P, D, wall, left, length: axialLength, ply, roll, T, hole, leaks }) => {
          const repairCase: RepairCase = {
            ...partWall,
            pipe: { ...partWall.pipe, outsideDiameter: length.mm(D), wallThickness: length.mm(wall) },
            service: { ...partWall.service, designPressure: gauge.MPa(P), designTemperature: temperature.degC(T) },
            defect: {
              ...(leaks ? leaking : partWall).defect,
              axialLength: length.mm(axialLength),
              remainingWall: length.mm(left),
              holeDiameter: length.mm(hole),
            },
            laminate: { ...partWall.laminate, plyThickness: length.mm(ply) },
            wrap: { ...partWall.wrap, rollLength: length.m(roll) },
          };
          try {
            expect(numbersOf(designRepair(repairCase)).every(Number.isFinite)).toBe(true);
          } catch (error) {
            if (!isCalculationError(error)) throw error;
            expect(error.code).toBe('invalid-input');
          }
        },
      ),
      { seed: 20261125, numRuns: 2000 },
    );
  });
});

function numbersOf(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  if (typeof value !== 'object' || value === null) return [];
  return Object.values(value).flatMap(numbersOf);
}

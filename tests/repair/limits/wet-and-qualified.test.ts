import { describe, expect, it } from 'vitest';
import { strain, temperature } from '../../../src/quantity/index.js';
import { designRepair, type RepairCase } from '../../../src/repair/index.js';
import { partWall } from '../example-case.js';

const of = (laminate: Partial<RepairCase['laminate']>) =>
  designRepair({ ...partWall, laminate: { ...partWall.laminate, ...laminate } });

describe('a wet glass transition', () => {
  // 110 degC dry, 50 degC in service, 20 K of margin where nothing leaks.
  it('fixes the limit where it is given: the laminate is refused above it and thicker near it', () => {
    expect(of({ wetGlassTransition: temperature.degC(69) }).verdict).toBe('not repairable');
    const [dry, wet] = [of({}), of({ wetGlassTransition: temperature.degC(75) })];
    expect(wet.verdict).toBe('designed');
    expect(wet.laminate?.hoopStrain).toBeLessThan(dry.laminate?.hoopStrain ?? 0);
    expect(wet.laminate?.thickness.value).toBeGreaterThan(dry.laminate?.thickness.value ?? 0);
  });

  it('equal to the dry one changes nothing, and above it is refused', () => {
    expect(of({ wetGlassTransition: temperature.degC(110) }).laminate).toEqual(of({}).laminate);
    expect(() => of({ wetGlassTransition: temperature.degC(111) })).toThrow(/since water softens a resin/);
  });
});

describe('qualified strains', () => {
  it('below the defaults count in their place, and above them earn nothing', () => {
    const [plain, low, high] = [
      of({}),
      of({ qualifiedStrains: { hoop: strain.percent(0.2), axial: strain.percent(0.2) } }),
      of({ qualifiedStrains: { hoop: strain.percent(0.9), axial: strain.percent(0.9) } }),
    ];
    expect(high.laminate).toEqual(plain.laminate);
    // Class 3 at twenty years allows 0.25 per cent both ways; what factor and mismatch take off is the same.
    const share = (design: typeof plain) => design.laminate?.thickness.value ?? Number.NaN;
    expect(share(low)).toBeGreaterThan(share(plain));
  });
});

describe('a strain near to where the laminate breaks', () => {
  it('is refused whoever put it in, and a margin of 2.5 to the strain to failure is enough', () => {
    const by = { by: 'A. Reader', edition: '2017' };
    const confirming = (hoop: number) => {
      const confirmed = [0, 1, 2].map((row) => ({
        path: `defaultStrains.continuous.3[${row}].hoop`,
        value: hoop,
        ...by,
      }));
      const laminate = { ...partWall.laminate, strainToFailure: strain.percent(1.5) };
      return designRepair({ ...partWall, laminate, confirmed });
    };
    expect(confirming(0.006).verdict).toBe('designed');
    const { verdict, reasons } = confirming(0.0061);
    expect(verdict).toBe('not covered');
    expect(reasons.map(({ text }) => text).join()).toContain('the strain to failure over 2.5');
    expect(reasons.flatMap(({ amounts = [] }) => amounts)).toMatchObject([{ value: 0.0061 }, { value: 0.006 }]);
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CalculationError } from '../../src/formula/index.js';
import { type GaugePressure, gauge, type Length, length, modulus, stress } from '../../src/quantity/index.js';
import { attempt, endLoad, highestPressure, pipeUnderBand } from '../../src/seal/index.js';
import { off, run, span } from '../properties/spans.js';

const names = ['siteLimit', 'strapLimit', 'fastenerLimit', 'sheetLimit', 'pipeLimit'] as const;
type Limits = Parameters<typeof highestPressure>[0];
const limitsOf = (values: readonly number[]): Limits =>
  Object.fromEntries(names.map((name, index) => [name, values[index]])) as unknown as Limits;

describe('the highest pressure for attempting the seal', () => {
  it('is the lowest of the limits, and the name is that of a limit with this value', () => {
    run(
      fc.property(fc.array(span(0, 1e7), { minLength: 5, maxLength: 5 }), (values) => {
        const { pressure, governing } = highestPressure(limitsOf(values));
        expect(pressure).toBe([...values].sort((a, b) => a - b)[0]);
        expect(limitsOf(values)[`${governing}Limit`]).toBe(pressure);
      }),
    );
  });

  it('is that of the site where the others only equal it', () => {
    expect(highestPressure(limitsOf([1e6, 1e6, 1e6, 1e6, 1e6]))).toEqual({ pressure: 1e6, governing: 'site' });
  });

  it('is never without the limit of the site, nor without any other', () => {
    for (const name of names) {
      const { [name]: _, ...rest } = limitsOf([1e6, 2e6, 3e6, 4e6, 5e6]);
      expect(() => highestPressure(rest as Limits)).toThrow(CalculationError);
    }
  });
});

describe('the attempt', () => {
  const water = {
    linePressure: gauge.bar(4),
    highestPressure: gauge.bar(5),
    phase: 'liquid',
    hazardous: false,
    writtenProcedure: false,
  } as const;

  it('may be made on harmless liquid up to the highest pressure, and not above it', () => {
    expect(attempt(water).decision).toBe('attempt');
    expect(attempt({ ...water, linePressure: gauge.bar(5) }).decision).toBe('attempt');
    const above = attempt({ ...water, linePressure: gauge.bar(5.001), writtenProcedure: true });
    expect(above).toEqual({ decision: 'refuse', pressureTooHigh: true, procedureMissing: false });
  });

  it('is refused on gas, two-phase or harmful contents unless the case names the procedure of the site', () => {
    for (const change of [{ phase: 'gas' }, { phase: 'two-phase' }, { hazardous: true }] as const) {
      expect(attempt({ ...water, ...change })).toEqual({
        decision: 'refuse',
        pressureTooHigh: false,
        procedureMissing: true,
      });
      expect(attempt({ ...water, ...change, writtenProcedure: true }).decision).toBe('attempt');
    }
  });

  it('is refused an answer while contents or procedure are not stated', () => {
    for (const name of ['hazardous', 'writtenProcedure', 'phase'] as const) {
      const { [name]: _, ...rest } = water;
      expect(() => attempt(rest as Parameters<typeof attempt>[0])).toThrow(CalculationError);
    }
  });

  it('is never made possible by more pressure', () => {
    run(
      fc.property(
        span(0, 1e6),
        span(0, 1e6),
        fc.constantFrom('liquid' as const, 'gas' as const, 'two-phase' as const),
        fc.boolean(),
        fc.boolean(),
        (p, rise, phase, hazardous, writtenProcedure) => {
          const at = (pressure: number) =>
            attempt({
              linePressure: pressure as GaugePressure,
              highestPressure: gauge.bar(5),
              phase,
              hazardous,
              writtenProcedure,
            }).decision;
          if (at(p) === 'refuse') expect(at(p + rise)).toBe('refuse');
          else expect(p).toBeLessThanOrEqual(5e5);
        },
      ),
    );
  });
});

describe('the pipe under the band', () => {
  const pipe = {
    outsideDiameter: length.mm(168.3),
    modulus: modulus.GPa(207),
    poissonRatio: 0.3,
    yieldStrength: stress.MPa(241),
    factor: 2,
  };

  it('bears less than either resistance alone, and at least half of the lesser', () => {
    run(
      fc.property(span(0.0005, 0.02), (t) => {
        const { pressure, buckling, yielding, governing } = pipeUnderBand({ ...pipe, wallThickness: t as Length });
        const lesser = Math.min(buckling, yielding);
        expect(pressure * pipe.factor).toBeLessThan(lesser);
        expect(pressure * pipe.factor).toBeGreaterThanOrEqual(lesser / 2);
        expect(governing).toBe(buckling <= yielding ? 'buckling' : 'yield');
      }),
    );
  });

  it('bears less the thinner it has become', () => {
    run(
      fc.property(span(0.001, 0.02), span(0.5, 0.99), (t, share) => {
        const of = (wall: number) => pipeUnderBand({ ...pipe, wallThickness: wall as Length }).pressure;
        expect(of(t * share)).toBeLessThan(of(t));
      }),
    );
  });

  it('gives way by buckling when thin and by yield when thick', () => {
    expect(pipeUnderBand({ ...pipe, wallThickness: length.mm(2) }).governing).toBe('buckling');
    expect(pipeUnderBand({ ...pipe, wallThickness: length.mm(10) }).governing).toBe('yield');
  });
});

describe('the end load', () => {
  it('is the pressure on the end of the pipe, and grows with it', () => {
    run(
      fc.property(span(1, 1e7), span(0.05, 1.2), span(0, 1e6), (p, D, rise) => {
        const of = (pressure: number) => endLoad({ pressure: pressure as GaugePressure, outsideDiameter: D as Length });
        expect(off(of(p), p * Math.PI * (D / 2) ** 2)).toBeLessThan(1e-14);
        expect(of(p + rise)).toBeGreaterThanOrEqual(of(p));
      }),
    );
  });
});

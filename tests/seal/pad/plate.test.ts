import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type GaugePressure,
  gauge,
  type Length,
  length,
  type Modulus,
  modulus,
  type Stress,
  stress,
} from '../../../src/quantity/index.js';
import {
  backingPlateDeflection,
  backingPlateDeflectionLarge,
  backingPlatePressure,
  backingPlateStress,
  backingPlateThickness,
  backingSheet,
  backingSheetOutsidePractice,
} from '../../../src/seal/index.js';
import { off, run, span } from '../../properties/spans.js';

const supports = fc.constantFrom('clamped', 'simply supported');

describe('the plate over the hole', () => {
  it('of the thickness that it needs has its strength over the factor as stress, and carries the pressure', () => {
    run(
      fc.property(
        span(1e3, 1e7),
        span(0.002, 0.1),
        span(1e8, 1e9),
        span(1, 4),
        supports,
        (p, d, S, factor, support) => {
          const edge = { support, poissonRatio: 0.3, holeDiameter: d as Length };
          const pressure = p as GaugePressure;
          const thickness = backingPlateThickness({ ...edge, pressure, strength: S as Stress, factor });
          expect(off(backingPlateStress({ ...edge, pressure, thickness }), S / factor)).toBeLessThan(1e-12);
          expect(off(backingPlatePressure({ ...edge, thickness, strength: S as Stress, factor }), p)).toBeLessThan(
            1e-12,
          );
        },
      ),
    );
  });

  it('is stressed and sags more when its edge is free to turn', () => {
    run(
      fc.property(span(1, 1e7), span(0.002, 0.1), span(0.0003, 0.01), span(0, 0.5), (p, d, t, poissonRatio) => {
        const plate = { pressure: p as GaugePressure, holeDiameter: d as Length, thickness: t as Length, poissonRatio };
        const [clamped, free] = (['clamped', 'simply supported'] as const).map((support) => ({ ...plate, support }));
        if (clamped === undefined || free === undefined) throw new Error('two supports');
        expect(backingPlateStress(free)).toBeGreaterThan(backingPlateStress(clamped));
        const E = modulus.GPa(200);
        expect(backingPlateDeflection({ ...free, modulus: E })).toBeGreaterThan(
          backingPlateDeflection({ ...clamped, modulus: E }),
        );
      }),
    );
  });

  it('never needs less thickness for more pressure or a wider hole', () => {
    run(
      fc.property(span(0, 1e7), span(0.002, 0.1), span(0, 1), supports, (p, d, more, support) => {
        const of = (pressure: number, hole: number) =>
          backingPlateThickness({
            pressure: pressure as GaugePressure,
            holeDiameter: hole as Length,
            strength: stress.MPa(205),
            factor: 1.5,
            support,
            poissonRatio: 0.3,
          });
        expect(of(p * (1 + more), d)).toBeGreaterThanOrEqual(of(p, d));
        expect(of(p, d * (1 + more))).toBeGreaterThanOrEqual(of(p, d));
      }),
    );
  });

  it('says when it sags by more than half its thickness', () => {
    const plate = {
      holeDiameter: length.mm(40),
      thickness: length.mm(0.4),
      modulus: modulus.GPa(193),
      support: 'simply supported',
      poissonRatio: 0.3,
    } as const;
    const perPascal = backingPlateDeflection({ ...plate, pressure: gauge.Pa(1) });
    const limit = 0.0002 / perPascal;
    expect(backingPlateDeflectionLarge({ ...plate, pressure: (limit * 1.001) as GaugePressure })).toBe(true);
    expect(backingPlateDeflectionLarge({ ...plate, pressure: (limit * 0.999) as GaugePressure })).toBe(false);
  });
});

describe('the backing sheet', () => {
  it('must be rolled first when bending alone takes it beyond yield, and only then', () => {
    run(
      fc.property(span(0.0001, 0.005), span(5e10, 2.1e11), span(1e8, 1.5e9), span(0.05, 1.5), (t, E, Sy, D) => {
        const sheet = backingSheet({
          thickness: t as Length,
          modulus: E as Modulus,
          yieldStrength: Sy as Stress,
          diameter: D as Length,
        });
        // The outer fibre lies at D/2 + t, the middle at D/2 + t/2.
        const strain = (D / 2 + t) / (D / 2 + t / 2) - 1;
        expect(off(sheet.stress, E * strain)).toBeLessThan(1e-9);
        expect(sheet.forming).toBe(sheet.stress > Sy ? 'pre-roll' : 'elastic');
        expect(off(sheet.yieldShare * Sy, sheet.stress)).toBeLessThan(1e-14);
      }),
    );
  });

  it('of steel, 1 mm thick on a 168.3 mm pipe, would be far beyond yield', () => {
    const sheet = backingSheet({
      thickness: length.mm(1),
      modulus: modulus.GPa(200),
      yieldStrength: stress.MPa(500),
      diameter: length.mm(168.3),
    });
    expect(sheet.forming).toBe('pre-roll');
    expect(off(sheet.stress, 200e9 / 169.3)).toBeLessThan(1e-12);
  });

  it('is held against the practice of the trade without using it', () => {
    const sheet = { modulus: modulus.GPa(193), yieldStrength: stress.MPa(205), diameter: length.mm(168.3) };
    expect(
      [0.29, 0.3, 0.4, 0.41].map((t) => backingSheetOutsidePractice({ ...sheet, thickness: length.mm(t) })),
    ).toEqual([true, false, false, true]);
  });
});

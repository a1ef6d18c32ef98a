import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CalculationError } from '../../src/formula/index.js';
import { type Length, length, type Ratio, ratio } from '../../src/quantity/index.js';
import {
  advancePerTurn,
  axialTapeWidth,
  helixLength,
  leadAngle,
  leadAngleSteep,
  lengthPerTurn,
} from '../../src/wrap/index.js';
import { span } from '../properties/spans.js';

const run = <T>(property: fc.IProperty<T>) => fc.assert(property, { seed: 20261125, numRuns: 300 });
const helices = fc.record({
  tapeWidth: span(0.02, 0.15),
  overlap: span(0, 0.8),
  meanDiameter: span(0.06, 1.2),
}) as fc.Arbitrary<{
  tapeWidth: Length;
  overlap: Ratio;
  meanDiameter: Length;
}>;

describe('a helical tape', () => {
  it('covers in one turn the circumference times its advance, once its overlap is taken off', () => {
    run(
      fc.property(helices, (helix) => {
        const laid = lengthPerTurn(helix) * helix.tapeWidth * (1 - helix.overlap);
        expect(laid / (Math.PI * helix.meanDiameter * advancePerTurn(helix))).toBeCloseTo(1, 9);
      }),
    );
  });

  it('is a helix of its circumference and its advance', () => {
    run(
      fc.property(helices, (helix) => {
        const circumference = (Math.PI * helix.meanDiameter) as Length;
        const turnLength = helixLength({ turns: 1, circumference, advance: advancePerTurn(helix) });
        expect(turnLength / lengthPerTurn(helix)).toBeCloseTo(1, 9);
        expect(Math.tan(leadAngle(helix)) / (advancePerTurn(helix) / circumference)).toBeCloseTo(1, 9);
        expect(Math.cos(leadAngle(helix)) * axialTapeWidth(helix)).toBeCloseTo(helix.tapeWidth, 9);
      }),
    );
  });

  it('advances less and lies closer to the hoop with more overlap', () => {
    run(
      fc.property(helices, span(0.001, 0.15), (helix, more) => {
        const wider = { ...helix, overlap: (helix.overlap + more) as Ratio };
        expect(advancePerTurn(wider)).toBeLessThan(advancePerTurn(helix));
        expect(leadAngle(wider)).toBeLessThan(leadAngle(helix));
      }),
    );
  });

  it('never advances less than the small-angle value', () => {
    run(
      fc.property(helices, (helix) => {
        expect(advancePerTurn(helix)).toBeGreaterThanOrEqual(helix.tapeWidth * (1 - helix.overlap));
      }),
    );
  });

  it('is refused when its uncovered width reaches the circumference', () => {
    for (const laid of [leadAngle, advancePerTurn, lengthPerTurn, axialTapeWidth]) {
      const wide = { tapeWidth: length.mm(315), overlap: ratio.fraction(0), meanDiameter: length.mm(100) };
      expect(() => laid(wide)).toThrow(/uncovered part .* must be below the circumference/);
      expect(() => laid({ ...wide, tapeWidth: length.mm(314) })).not.toThrow();
    }
  });

  it('is refused with the circumference, which its uncovered width may not even reach', () => {
    const laid = (uncovered: number, D: number) => () =>
      leadAngle({ tapeWidth: uncovered as Length, overlap: ratio.fraction(0), meanDiameter: D as Length });
    expect(laid(Math.PI, 1)).toThrow(expect.objectContaining({ parameter: 'tapeWidth', limit: Math.PI }));
    expect(laid(1, 0.25)).toThrow(expect.objectContaining({ parameter: 'tapeWidth', limit: Math.PI / 4 }));
    expect(laid(1, 1e308)).toThrow(expect.objectContaining({ parameter: 'circumference' }));
  });

  it.each([1, 1.2])('is refused at an overlap of %s', (overlap) => {
    expect(() =>
      leadAngle({ tapeWidth: length.mm(100), overlap: overlap as Ratio, meanDiameter: length.mm(169) }),
    ).toThrow(CalculationError);
  });

  it('is noted as steep beyond 10 deg', () => {
    const at = (overlap: number) =>
      leadAngleSteep({
        tapeWidth: length.mm(100),
        overlap: overlap as Ratio,
        meanDiameter: length.mm(100 / (Math.PI * Math.sin(Math.PI / 18))),
      });
    expect(at(0.01)).toBe(false);
    const tenDegrees = Array.from({ length: 30 }, (_, at) => 0.1 + at / 100)
      .map((D) => ({ tapeWidth: Math.PI * D * Math.sin(Math.PI / 18), overlap: 0, meanDiameter: D }) as never)
      .filter((helix) => leadAngle(helix) === Math.PI / 18);
    expect(tenDegrees.length).toBeGreaterThan(0);
    for (const helix of tenDegrees) expect(leadAngleSteep(helix)).toBe(false);
    expect(
      leadAngleSteep({ tapeWidth: length.mm(100), overlap: ratio.fraction(0), meanDiameter: length.mm(180) }),
    ).toBe(true);
  });
});

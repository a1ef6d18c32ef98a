import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CalculationError } from '../../src/formula/index.js';
import { length, type Ratio, ratio } from '../../src/quantity/index.js';
import {
  advancePerTurn,
  axialTapeWidth,
  leadAngle,
  lengthPerTurn,
  minimumLayers,
  tapePlan,
} from '../../src/wrap/index.js';
import { span } from '../properties/spans.js';

const run = <T>(property: fc.IProperty<T>) => fc.assert(property, { seed: 20261125, numRuns: 300 });
const wrap = {
  outsideDiameter: length.mm(168.3),
  tapeWidth: length.mm(100),
  overlap: ratio.percent(50),
  layerThickness: length.mm(0.8),
  requiredLayers: 8,
  fullCountLength: length.mm(600),
};

describe('a tape plan', () => {
  it('grows in tape with every layer, with the length and with the diameter', () => {
    run(
      fc.property(span(0, 0.8), fc.integer({ min: 1, max: 30 }), span(0.06, 1.2), span(0.1, 3), (overlap, n, D, L) => {
        const input = {
          ...wrap,
          overlap: overlap as Ratio,
          requiredLayers: n,
          outsideDiameter: length.mm(D * 1000),
          fullCountLength: length.mm(L * 1000),
        };
        const { tapeLength, passes } = tapePlan(input);
        const more = tapePlan({ ...input, requiredLayers: n + minimumLayers({ overlap: overlap as Ratio }) });
        expect(more.passes).toBe(passes + 1);
        expect(more.tapeLength).toBeGreaterThan(tapeLength);
        expect(tapePlan({ ...input, fullCountLength: length.mm(L * 1001) }).tapeLength).toBeGreaterThan(tapeLength);
        expect(tapePlan({ ...input, outsideDiameter: length.mm(D * 1001) }).tapeLength).toBeGreaterThan(tapeLength);
      }),
    );
  });

  it('sums its rows, one for each pass, each on the pass below', () => {
    const { rows, passes, tapeLength } = tapePlan(wrap);
    expect(rows.map(({ pass }) => pass)).toEqual([1, 2, 3, 4]);
    expect(passes).toBe(4);
    expect(rows.reduce((sum, row) => sum + row.tapeLength, 0)).toBeCloseTo(tapeLength, 12);
    rows.slice(1).forEach((row, index) => {
      expect(row.meanDiameter - (rows[index]?.meanDiameter ?? 0)).toBeCloseTo(0.0032, 12);
    });
  });

  it('has the angle, the advance and the tape of each pass from their own formulas, bit for bit', () => {
    run(
      fc.property(span(0, 0.8), span(0.06, 1.2), fc.integer({ min: 1, max: 30 }), (overlap, D, requiredLayers) => {
        const outsideDiameter = length.mm(D * 1000);
        const { rows, overallLength } = tapePlan({
          ...wrap,
          overlap: overlap as Ratio,
          outsideDiameter,
          requiredLayers,
        });
        for (const row of rows) {
          const helix = { tapeWidth: wrap.tapeWidth, overlap: overlap as Ratio, meanDiameter: row.meanDiameter };
          expect(row.leadAngle).toBe(leadAngle(helix));
          expect(row.advance).toBe(advancePerTurn(helix));
          expect(row.turns).toBe((overallLength - axialTapeWidth(helix)) / row.advance);
          expect(row.tapeLength).toBe(row.turns * lengthPerTurn(helix) + 2 * Math.PI * row.meanDiameter);
        }
      }),
    );
  });

  it('is longer than its full-count length by more than two tape widths', () => {
    const { overallLength } = tapePlan(wrap);
    expect(overallLength).toBeGreaterThan(0.8);
    expect(overallLength).toBeLessThan(0.802);
  });

  it('is refused for tape that cannot be laid, and beyond 1000 layers', () => {
    expect(() => tapePlan({ ...wrap, tapeWidth: length.mm(1200) })).toThrow(CalculationError);
    expect(() => tapePlan({ ...wrap, requiredLayers: 1001 })).toThrow(/at most the most that a wrap is planned for/);
    expect(() => tapePlan({ ...wrap, overlap: 1 as Ratio })).toThrow(CalculationError);
  });
});

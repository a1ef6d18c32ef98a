import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CalculationError } from '../../src/formula/index.js';
import { type Ratio, ratio } from '../../src/quantity/index.js';
import {
  leastOverlap,
  maximumLayers,
  meanLayers,
  minimumLayers,
  minimumLayersWithoutMargin,
} from '../../src/wrap/index.js';
import { span } from '../properties/spans.js';

const run = <T>(property: fc.IProperty<T>) => fc.assert(property, { seed: 20261125, numRuns: 300 });

describe('the layer count of overlapped tape', () => {
  it('never falls with more overlap', () => {
    run(
      fc.property(span(0, 0.9), span(0, 0.09), (overlap, more) => {
        const count = minimumLayers({ overlap: (overlap + more) as Ratio });
        expect(count).toBeGreaterThanOrEqual(minimumLayers({ overlap: overlap as Ratio }));
      }),
    );
  });

  it('has its mean between its least and its greatest, at most one apart', () => {
    run(
      fc.property(span(0, 0.95), (o) => {
        const overlap = o as Ratio;
        const [least, mean, greatest] = [
          minimumLayers({ overlap }),
          meanLayers({ overlap }),
          maximumLayers({ overlap }),
        ];
        expect(least).toBeLessThanOrEqual(mean * (1 + 1e-9));
        expect(greatest).toBeGreaterThanOrEqual(mean * (1 - 1e-9));
        expect(greatest - least).toBeLessThanOrEqual(1);
      }),
    );
  });

  it('takes the float of an exact overlap as the overlap that it stands for', () => {
    for (let layers = 1; layers <= 40; layers++) {
      const overlap = leastOverlap({ layers });
      expect(minimumLayers({ overlap })).toBe(layers);
      expect(maximumLayers({ overlap })).toBe(layers);
    }
    expect(minimumLayers({ overlap: ratio.percent(95) })).toBe(20);
  });

  it('drops by one just below the least overlap for it', () => {
    for (let layers = 2; layers <= 20; layers++) {
      const overlap = (leastOverlap({ layers }) - 1e-6) as Ratio;
      expect(minimumLayers({ overlap })).toBe(layers - 1);
    }
  });

  it.each([1, 1.5, -0.1, Number.NaN])('is refused at an overlap of %s', (overlap) => {
    for (const layers of [minimumLayers, meanLayers, maximumLayers]) {
      expect(() => layers({ overlap: overlap as Ratio })).toThrow(CalculationError);
    }
  });

  it('is noted as without margin within 1 % of the tape width of losing a layer', () => {
    expect(minimumLayersWithoutMargin({ overlap: 0.00999 as Ratio })).toBe(true);
    expect(minimumLayersWithoutMargin({ overlap: 0.01 as Ratio })).toBe(false);
    expect(minimumLayersWithoutMargin({ overlap: ratio.percent(50) })).toBe(true);
    expect(minimumLayersWithoutMargin({ overlap: ratio.percent(50.9) })).toBe(true);
    expect(minimumLayersWithoutMargin({ overlap: ratio.percent(51.1) })).toBe(false);
    expect(minimumLayersWithoutMargin({ overlap: ratio.percent(55) })).toBe(false);
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CalculationError } from '../../src/formula/index.js';
import { type Ratio, ratio } from '../../src/quantity/index.js';
import { leastOverlap, minimumLayers, passes, passesSavedBySlightlyMoreOverlap } from '../../src/wrap/index.js';
import { span } from '../properties/spans.js';

const run = <T>(property: fc.IProperty<T>) => fc.assert(property, { seed: 20261125, numRuns: 300 });
const layers = fc.integer({ min: 1, max: 60 });

describe('passes of tape', () => {
  it('lay the required layers, and one pass fewer does not', () => {
    run(
      fc.property(layers, span(0, 0.9), (requiredLayers, o) => {
        const overlap = o as Ratio;
        const count = passes({ requiredLayers, overlap });
        expect(count * minimumLayers({ overlap })).toBeGreaterThanOrEqual(requiredLayers);
        expect((count - 1) * minimumLayers({ overlap })).toBeLessThan(requiredLayers);
      }),
    );
  });

  it('never rise with more overlap', () => {
    run(
      fc.property(layers, span(0, 0.9), span(0, 0.09), (requiredLayers, overlap, more) => {
        const wider = passes({ requiredLayers, overlap: (overlap + more) as Ratio });
        expect(wider).toBeLessThanOrEqual(passes({ requiredLayers, overlap: overlap as Ratio }));
      }),
    );
  });

  it('never go by the mean count: 49 % lays one layer a pass, not 1.96', () => {
    expect(passes({ requiredLayers: 8, overlap: ratio.percent(49) })).toBe(8);
    expect(passes({ requiredLayers: 8, overlap: ratio.percent(50) })).toBe(4);
  });

  it('are noted when slightly more overlap saves one', () => {
    const saves = (requiredLayers: number, percent: number) =>
      passesSavedBySlightlyMoreOverlap({ requiredLayers, overlap: ratio.percent(percent) });
    expect(saves(8, 47)).toBe(true);
    expect(saves(8, 44)).toBe(false);
    expect(saves(1, 47)).toBe(false);
    expect(saves(8, 63)).toBe(true);
    const next = leastOverlap({ layers: minimumLayers({ overlap: ratio.percent(63) }) + 1 });
    expect(passes({ requiredLayers: 8, overlap: next })).toBe(3);
  });

  it.each([0, -1, 1.5, Number.NaN])('are refused for %s layers', (requiredLayers) => {
    expect(() => passes({ requiredLayers, overlap: ratio.percent(50) })).toThrow(CalculationError);
  });
});

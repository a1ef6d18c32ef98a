import { below, finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { Length, Volume } from '../../quantity/index.js';

export interface LineVolumeInput {
  readonly outsideDiameter: Length;
  readonly wallThickness: Length;
  readonly length: Length;
}

/**
 * Volume of a line: the water that fills it.
 *
 * $$V = \frac{\pi}{4} (D - 2 t)^2 L$$
 *
 * @param input.outsideDiameter D [m], > 0
 * @param input.wallThickness   t [m], > 0 and < D/2
 * @param input.length          L, length of the test section [m], >= 0
 * @returns volume [m3]
 * @throws CalculationError `invalid-input`
 * @remarks The handbook prints 0.0408 for inches, feet and US gallons; pi/4 x 12/231 is 0.0407999.
 * @see Pipeline Rules of Thumb Handbook, p. 140
 */
export function lineVolume(input: LineVolumeInput): Volume {
  const { outsideDiameter: D, wallThickness: t, length: L } = input;
  positive(D, 'outsideDiameter', 'm');
  positive(t, 'wallThickness', 'm');
  below(t, D / 2, 'half the outside diameter', 'wallThickness', 'm');
  nonNegative(L, 'length', 'm');
  const V = (Math.PI / 4) * (D - 2 * t) ** 2 * L;
  finite(V, 'line volume', 'm3');
  return V as Volume;
}

export const lineVolumeFormula = /* @__PURE__ */ formula<LineVolumeInput, Volume>({
  id: 'acceptance/line-volume',
  title: 'Volume of a line',
  search: ['fill volume', 'hydrotest water'],
  compute: lineVolume,
  equation: { expression: 'pi / 4 * (D - 2 * t)^2 * L' },
  inputs: {
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.06, 1.2] },
    wallThickness: { symbol: 't', kind: 'length', name: 'wall thickness', sample: [0.002, 0.025] },
    length: { symbol: 'L', kind: 'length', name: 'length of the test section', sample: [0, 50000] },
  },
  output: { symbol: 'V', kind: 'volume', name: 'volume of the line' },
  sources: [{ key: 'rules-of-thumb', locator: 'p. 140' }],
  evidence: { form: { tag: 'published', derived: 'area of the bore times the length' } },
  limits: [],
});

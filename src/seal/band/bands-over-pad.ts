import { finite, formula, positive, wholeNumber } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';

export interface BandsOverPadInput {
  readonly bands: number;
  readonly bandWidth: Length;
  readonly padDiameter: Length;
}

/**
 * Bands that press on a pad, of those that lie side by side across it: what reaches beyond the pad presses on the pipe.
 *
 * $$n_p = \min\left(n, \frac{d_p}{w}\right)$$
 *
 * @param input.bands       n, bands side by side, 1 or more
 * @param input.bandWidth   w, of each [m], > 0
 * @param input.padDiameter d_p, of the pad [m], > 0
 * @returns bands over the pad: the band that reaches beyond it counts by the part of its width that does not
 * @throws CalculationError `invalid-input`
 * @remarks A round pad is narrower under its outer bands, which press with less than those over its middle: that is left to
 *   the factor of the clamping force.
 */
export function bandsOverPad(input: BandsOverPadInput): number {
  const { bands: n, bandWidth: w, padDiameter: d } = input;
  wholeNumber(n, 1, 'bands');
  positive(w, 'bandWidth', 'm');
  positive(d, 'padDiameter', 'm');
  const over = Math.min(n, d / w);
  finite(over, 'bands over the pad', '');
  return over;
}

/** Whether bands lie beside the pad, where they hold nothing: n w > d_p. */
export function bandsOverPadLiesBeside({ bands: n, bandWidth: w, padDiameter: d }: BandsOverPadInput): boolean {
  return n * w > d;
}

export const bandsOverPadFormula = /* @__PURE__ */ formula<BandsOverPadInput, number>({
  id: 'seal/bands-over-pad',
  title: 'Bands that lie over a pad',
  search: ['strap', 'banding', 'leak clamp'],
  compute: bandsOverPad,
  equation: { expression: 'min(n, d_p / w)' },
  inputs: {
    bands: { symbol: 'n', kind: 'count', name: 'bands side by side', sample: [1, 4] },
    bandWidth: { symbol: 'w', kind: 'length', name: 'width of a band', sample: [0.01, 0.1] },
    padDiameter: { symbol: 'd_p', kind: 'length', name: 'diameter of the pad', sample: [0.03, 0.2] },
  },
  output: { symbol: 'n_p', kind: 'number', name: 'bands over the pad' },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'share of the width of the bands that lies over the pad' } },
  limits: [{ sort: 'note', text: 'bands lie beside the pad, where they hold nothing', beyond: bandsOverPadLiesBeside }],
});

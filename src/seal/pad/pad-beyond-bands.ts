import { finite, formula, positive, wholeNumber } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';

export interface PadBeyondBandsInput {
  readonly bands: number;
  readonly bandWidth: Length;
  readonly padDiameter: Length;
}

/**
 * How far a pad reaches beyond its bands along the pipe, to either side: there only the stiffness of the sheet holds it.
 *
 * $$a = \max\left(0, \frac{d_p - n w}{2}\right)$$
 *
 * @param input.bands       n, bands side by side over the middle of the pad, 1 or more
 * @param input.bandWidth   w, of each [m], > 0
 * @param input.padDiameter d_p, of the pad [m], > 0
 * @returns length of the pad beyond the bands [m]; 0 where they cover it
 * @throws CalculationError `invalid-input`
 */
export function padBeyondBands(input: PadBeyondBandsInput): Length {
  const { bands: n, bandWidth: w, padDiameter: d } = input;
  wholeNumber(n, 1, 'bands');
  positive(w, 'bandWidth', 'm');
  positive(d, 'padDiameter', 'm');
  finite(n * w, 'width of all bands', 'm');
  return Math.max(0, (d - n * w) / 2) as Length;
}

export const padBeyondBandsFormula = /* @__PURE__ */ formula<PadBeyondBandsInput, Length>({
  id: 'seal/pad-beyond-bands',
  title: 'Pad beyond its bands',
  compute: padBeyondBands,
  equation: {
    branches: [{ when: 'd_p > n * w', expression: '(d_p - n * w) / 2' }, { expression: '0 * w' }],
  },
  inputs: {
    bands: { symbol: 'n', kind: 'count', name: 'bands side by side', sample: [1, 4] },
    bandWidth: { symbol: 'w', kind: 'length', name: 'width of a band', sample: [0.01, 0.1] },
    padDiameter: { symbol: 'd_p', kind: 'length', name: 'diameter of the pad', sample: [0.03, 0.2] },
  },
  output: { symbol: 'a', kind: 'length', name: 'pad beyond the bands, to either side' },
  sources: [],
  evidence: { form: { tag: 'chosen' } },
  limits: [],
});

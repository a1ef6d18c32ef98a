import { finite, formula, positive } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';

export interface BandedLengthInput {
  readonly bands: number;
  readonly bandWidth: Length;
}

/**
 * Length of pipe under bands that lie side by side.
 *
 * $$W_b = n w$$
 *
 * @param input.bands      n, bands side by side, > 0
 * @param input.bandWidth  w [m], > 0
 * @returns length along the pipe [m]
 * @throws CalculationError `invalid-input`
 */
export function bandedLength(input: BandedLengthInput): Length {
  const { bands: n, bandWidth: w } = input;
  positive(n, 'bands', '');
  positive(w, 'bandWidth', 'm');
  const length = n * w;
  finite(length, 'length under the bands', 'm');
  return length as Length;
}

export const bandedLengthFormula = /* @__PURE__ */ formula<BandedLengthInput, Length>({
  id: 'seal/banded-length',
  title: 'Length of pipe under the bands',
  compute: bandedLength,
  equation: { expression: 'n * w' },
  inputs: {
    bands: { symbol: 'n', kind: 'number', name: 'bands side by side', sample: [1, 4] },
    bandWidth: { symbol: 'w', kind: 'length', name: 'width of a band', sample: [0.01, 0.1] },
  },
  output: { symbol: 'W_b', kind: 'length', name: 'length under the bands' },
  sources: [],
  evidence: { form: { tag: 'chosen' } },
  limits: [],
});

import { below, formula, nonNegative, positive } from '../formula/index.js';
import type { Length, Ratio } from '../quantity/index.js';

export interface SideLapInput {
  readonly overlap: Ratio;
  readonly tapeWidth: Length;
}

/**
 * Width on which a turn of tape lies on the turn beside it.
 *
 * $$u = o\, w$$
 *
 * @param input.overlap   o, overlap of neighbouring turns, as a part of the tape width [1], from 0 up to, not including, 1
 * @param input.tapeWidth w [m], > 0
 * @returns side lap [m]
 * @throws CalculationError `invalid-input`
 */
export function sideLap(input: SideLapInput): Length {
  const { overlap: o, tapeWidth: w } = input;
  nonNegative(o, 'overlap', '');
  below(o, 1, 'the whole width', 'overlap', '');
  positive(w, 'tapeWidth', 'm');
  return (o * w) as Length;
}

export const sideLapFormula = /* @__PURE__ */ formula<SideLapInput, Length>({
  id: 'wrap/side-lap',
  title: 'Side lap of a helical tape',
  compute: sideLap,
  equation: { expression: 'o * w' },
  inputs: {
    overlap: {
      symbol: 'o',
      kind: 'ratio',
      name: 'overlap of neighbouring turns, as a part of the tape width',
      sample: [0, 0.8],
    },
    tapeWidth: { symbol: 'w', kind: 'length', name: 'tape width', sample: [0.025, 0.3] },
  },
  output: { symbol: 'u', kind: 'length', name: 'side lap' },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'what the overlap means' } },
  limits: [],
});

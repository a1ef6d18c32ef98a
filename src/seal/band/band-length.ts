import { finite, formula, nonNegative, positive, wholeNumber } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';

export interface BandLengthInput {
  readonly circumference: Length;
  readonly buildUp: Length;
  readonly bandThickness: Length;
  readonly overlap: Length;
  readonly turns?: number | undefined;
}

/**
 * Length of band to cut for a pipe whose circumference was measured.
 *
 * $$L = n \left[C + \pi (2b + n t)\right] + l$$
 *
 * @param input.circumference C, circumference measured on the bare pipe [m], > 0
 * @param input.buildUp b, build-up between pipe and band, radially [m], >= 0
 * @param input.bandThickness t, thickness of the band [m], > 0
 * @param input.overlap l, overlap or tail that the fastener takes [m], >= 0; no default
 * @param input.turns n, turns of the band round the pipe, 1 or more; 1 when not given
 * @returns length of band to cut [m]
 * @throws CalculationError `invalid-input`
 * @remarks Each turn at its own middle. Build-up on one side only shortens the way: the length is then on the long
 *   side, which costs a cut.
 */
export function bandLength(input: BandLengthInput): Length {
  const { circumference: C, buildUp: b, bandThickness: t, overlap: l, turns: n = 1 } = input;
  positive(C, 'circumference', 'm');
  nonNegative(b, 'buildUp', 'm');
  positive(t, 'bandThickness', 'm');
  nonNegative(l, 'overlap', 'm');
  wholeNumber(n, 1, 'turns');
  const length = n * (C + Math.PI * (2 * b + n * t)) + l;
  finite(length, 'band length', 'm');
  return length as Length;
}

export const bandLengthFormula = /* @__PURE__ */ formula<BandLengthInput, Length>({
  id: 'seal/band-length',
  title: 'Length of band to cut',
  search: ['strap', 'banding', 'clamp'],
  compute: bandLength,
  equation: { expression: 'n * (C + pi * (2 * b + n * t)) + l' },
  inputs: {
    circumference: { symbol: 'C', kind: 'length', name: 'circumference measured on the bare pipe', sample: [0.15, 4] },
    buildUp: { symbol: 'b', kind: 'length', name: 'build-up between pipe and band, radially', sample: [0, 0.03] },
    bandThickness: { symbol: 't', kind: 'length', name: 'thickness of the band', sample: [3e-4, 0.002] },
    overlap: { symbol: 'l', kind: 'length', name: 'overlap or tail that the fastener takes', sample: [0, 0.3] },
    turns: { symbol: 'n', kind: 'count', name: 'turns of the band round the pipe', sample: [1, 4], default: 1 },
  },
  output: { symbol: 'L', kind: 'length', name: 'length of band to cut' },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'sum of the circles of every turn' } },
  limits: [],
});

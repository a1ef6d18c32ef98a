import { formula } from '../formula/index.js';
import type { Length, Ratio } from '../quantity/index.js';
import { leadCosine, leadSine, turnLengthAt } from './lead-sine.js';

export interface LengthPerTurnInput {
  readonly tapeWidth: Length;
  readonly overlap: Ratio;
  readonly meanDiameter: Length;
}

/**
 * Length of tape in one turn of an overlapped helix.
 *
 * $$\ell = \frac{\pi D}{\cos\psi} = \sqrt{(\pi D)^2 + a^2}$$
 *
 * @param input.tapeWidth w, width of the tape [m], > 0 and w(1 - o) < pi D
 * @param input.overlap o, overlap of neighbouring turns, as a part of the tape width [1], from 0 up to, not
 *   including, 1
 * @param input.meanDiameter D, mean diameter of the layer being laid [m], > 0
 * @returns length of tape per turn [m]
 * @throws CalculationError `invalid-input`; `no-solution` when w(1 - o) reaches pi D
 * @see IEA advanced mathematics item, 1995, for the length of a helix
 */
export function lengthPerTurn(input: LengthPerTurnInput): Length {
  const { tapeWidth: w, overlap: o, meanDiameter: D } = input;
  return turnLengthAt(D, leadCosine(leadSine(w, o, D)));
}

export const lengthPerTurnFormula = /* @__PURE__ */ formula<LengthPerTurnInput, Length>({
  id: 'wrap/length-per-turn',
  title: 'Tape laid in one turn',
  search: ['spiral'],
  compute: lengthPerTurn,
  equation: {
    expression: 'pi * D / sqrt(1 - s^2)',
    where: [{ symbol: 's', kind: 'number', expression: 'w * (1 - o) / (pi * D)' }],
  },
  inputs: {
    tapeWidth: { symbol: 'w', kind: 'length', name: 'width of the tape', sample: [0.025, 0.3] },
    overlap: {
      symbol: 'o',
      kind: 'ratio',
      name: 'overlap of neighbouring turns, as a part of the tape width',
      sample: [0, 0.8],
    },
    meanDiameter: { symbol: 'D', kind: 'length', name: 'mean diameter of the layer being laid', sample: [0.06, 1.2] },
  },
  output: { symbol: 'l_1', kind: 'length', name: 'length of tape per turn' },
  sources: [{ key: 'iea-1995', locator: 'advanced mathematics item on a string wound round a rod' }],
  evidence: { form: { tag: 'chosen', derived: 'cylinder unrolled flat; tape area equals layers times wrapped area' } },
  limits: [],
});

import { formula, nonNegative, positive } from '../formula/index.js';
import type { Length } from '../quantity/index.js';

export interface OutsideDiameterFromCircumferenceInput {
  readonly circumference: Length;
  readonly tapeThickness?: Length | undefined;
}

/**
 * Outside diameter of a pipe from the circumference read on a tape.
 *
 *$$D = \frac{C}{\pi} - h$$
 *
 * @param input.circumference  C, as read on the tape [m], > 0
 * @param input.tapeThickness  h [m], >= 0; 0 when left out
 * @returns outside diameter [m]
 * @throws CalculationError `invalid-input`
 * @remarks The middle of a bent tape keeps its length and lies half the tape thickness above the surface. Paint or coating
 *   under the tape counts twice: take it off the result.
 * @see geometry of the circle
 */
export function outsideDiameterFromCircumference(input: OutsideDiameterFromCircumferenceInput): Length {
  const { circumference: C, tapeThickness: h = 0 } = input;
  positive(C, 'circumference', 'm');
  nonNegative(h, 'tapeThickness', 'm');
  const D = C / Math.PI - h;
  positive(D, 'outside diameter', 'm');
  return D as Length;
}

export const outsideDiameterFromCircumferenceFormula = /* @__PURE__ */ formula<
  OutsideDiameterFromCircumferenceInput,
  Length
>({
  id: 'pipe/outside-diameter-from-circumference',
  title: 'Outside diameter from a measured circumference',
  search: ['tape measure', 'pi tape', 'girth'],
  compute: outsideDiameterFromCircumference,
  equation: { expression: 'C / pi - h' },
  inputs: {
    circumference: { symbol: 'C', kind: 'length', name: 'measured circumference', sample: [0.06, 4] },
    tapeThickness: { symbol: 'h', kind: 'length', name: 'thickness of the tape', sample: [0, 0.001], default: 0 },
  },
  output: { symbol: 'D', kind: 'length', name: 'outside diameter' },
  sources: [],
  evidence: {
    form: { tag: 'practice', derived: 'geometry: the middle line of the tape is a circle of diameter D + h' },
  },
  limits: [],
});

import { finite, formula, positive } from '../formula/index.js';
import type { Length } from '../quantity/index.js';

export interface CircumferenceInput {
  readonly outsideDiameter: Length;
}

/**
 * Circumference of a pipe: what a tape of no thickness reads round it.
 *
 * $$C = \pi D$$
 *
 * @param input.outsideDiameter D [m], > 0
 * @returns circumference [m]
 * @throws CalculationError `invalid-input`
 */
export function circumference(input: CircumferenceInput): Length {
  const { outsideDiameter: D } = input;
  positive(D, 'outsideDiameter', 'm');
  const C = Math.PI * D;
  finite(C, 'circumference', 'm');
  return C as Length;
}

export const circumferenceFormula = /* @__PURE__ */ formula<CircumferenceInput, Length>({
  id: 'pipe/circumference',
  title: 'Circumference of a pipe',
  search: ['tape measure', 'pi tape', 'girth'],
  compute: circumference,
  equation: { expression: 'pi * D' },
  inputs: {
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.0213, 1.2] },
  },
  output: { symbol: 'C', kind: 'length', name: 'circumference' },
  sources: [],
  evidence: { form: { tag: 'chosen' } },
  limits: [],
});

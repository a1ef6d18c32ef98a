import { finite, formula, positive } from '../formula/index.js';
import type { Length } from '../quantity/index.js';

export interface HalfCircumferenceInput {
  readonly outsideDiameter: Length;
}

/**
 * Half of the way round a pipe.
 *
 * $$h = \frac{\pi D}{2}$$
 *
 * @param input.outsideDiameter D [m], > 0
 * @returns half of the circumference [m]
 * @throws CalculationError `invalid-input`
 */
export function halfCircumference(input: HalfCircumferenceInput): Length {
  const { outsideDiameter: D } = input;
  positive(D, 'outsideDiameter', 'm');
  const h = (Math.PI * D) / 2;
  finite(h, 'half of the circumference', 'm');
  return h as Length;
}

export const halfCircumferenceFormula = /* @__PURE__ */ formula<HalfCircumferenceInput, Length>({
  id: 'pipe/half-circumference',
  title: 'Half of the way round a pipe',
  compute: halfCircumference,
  equation: { expression: 'pi * D / 2' },
  inputs: {
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.0213, 1.2] },
  },
  output: { symbol: 'h', kind: 'length', name: 'half of the circumference' },
  sources: [],
  evidence: { form: { tag: 'chosen' } },
  limits: [],
});

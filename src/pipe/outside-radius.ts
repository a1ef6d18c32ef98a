import { formula, positive } from '../formula/index.js';
import type { Length } from '../quantity/index.js';

export interface OutsideRadiusInput {
  readonly outsideDiameter: Length;
}

/**
 * Outside radius of a pipe: the wall that would leave no bore.
 *
 * $$R = \frac{D}{2}$$
 *
 * @param input.outsideDiameter D [m], > 0
 * @returns outside radius [m]
 * @throws CalculationError `invalid-input`
 * @see geometry of the circle
 */
export function outsideRadius(input: OutsideRadiusInput): Length {
  const { outsideDiameter: D } = input;
  positive(D, 'outsideDiameter', 'm');
  return (D / 2) as Length;
}

export const outsideRadiusFormula = /* @__PURE__ */ formula<OutsideRadiusInput, Length>({
  id: 'pipe/outside-radius',
  title: 'Outside radius of a pipe',
  compute: outsideRadius,
  equation: { expression: 'D / 2' },
  inputs: {
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.0213, 1.2] },
  },
  output: { symbol: 'R', kind: 'length', name: 'outside radius' },
  sources: [],
  evidence: { form: { tag: 'practice' } },
  limits: [],
});

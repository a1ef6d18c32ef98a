import { finite, formula, positive } from '../../formula/index.js';
import type { Area, Length } from '../../quantity/index.js';

export interface CircleAreaInput {
  readonly diameter: Length;
}

/**
 * Area of a round hole or of a round pad.
 *
 * $$A = \frac{\pi d^2}{4}$$
 *
 * @param input.diameter d, diameter [m], > 0
 * @returns area [m2]
 * @throws CalculationError `invalid-input`
 * @remarks For a hole that is not round take the circle that encloses it: the larger area is the safe one.
 */
export function circleArea(input: CircleAreaInput): Area {
  const { diameter: d } = input;
  positive(d, 'diameter', 'm');
  const area = (Math.PI * d * d) / 4;
  finite(area, 'area', 'm2');
  return area as Area;
}

export const circleAreaFormula = /* @__PURE__ */ formula<CircleAreaInput, Area>({
  id: 'seal/circle-area',
  title: 'Area of a round hole or pad',
  compute: circleArea,
  equation: { expression: 'pi * d^2 / 4' },
  inputs: {
    diameter: { symbol: 'd', kind: 'length', name: 'diameter', sample: [0.001, 0.2] },
  },
  output: { symbol: 'A', kind: 'area', name: 'area' },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'geometry of the circle' } },
  limits: [],
});

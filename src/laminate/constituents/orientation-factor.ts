import { finite, formula, listOfRows, nonNegative, refuse, within } from '../../formula/index.js';
import type { Angle } from '../../quantity/index.js';

/** Fibres of one direction, and their share of all. */
export interface FibreDirection {
  /** From the direction of the load [rad]. */
  readonly angle: Angle;
  /** Share of the fibres that run so. */
  readonly share: number;
}

export interface OrientationFactorInput {
  readonly directions: readonly FibreDirection[];
}

/**
 * Share of its stiffness that fibre of several directions gives to one of them (Krenchel).
 *
 * $$\eta_0 = \frac{\sum a_n \cos^4\theta_n}{\sum a_n}$$
 *
 * @param input.directions  angle off the direction of the load [rad], -pi to pi, and share of the fibre, >= 0
 * @returns orientation factor, 0 to 1
 * @throws CalculationError `invalid-input`
 * @remarks 1 for one direction, 1/2 for 0 and 90 degrees alike, 1/4 for those at 45, 3/8 for a mat with fibres of all directions in
 *   its plane, 1/5 for all directions in space.
 * @see Krenchel 1964, as recalled
 */
export function orientationFactor({ directions }: OrientationFactorInput): number {
  listOfRows(directions, 'directions');
  let [sum, whole] = [0, 0];
  directions.forEach(({ angle, share }, index) => {
    within(angle, -Math.PI, Math.PI, `directions[${index}].angle`, 'rad');
    nonNegative(share, `directions[${index}].share`, '');
    sum += share * Math.cos(angle) ** 4;
    whole += share;
  });
  if (whole === 0)
    refuse({
      code: 'invalid-input',
      parameter: 'directions',
      value: 0,
      unit: '',
      constraint: 'must have shares above 0',
    });
  const factor = sum / whole;
  finite(factor, 'orientation factor', '');
  return factor;
}

export const orientationFactorFormula = /* @__PURE__ */ formula<OrientationFactorInput, number>({
  id: 'laminate/orientation-factor',
  title: 'Orientation factor of a cloth or mat',
  compute: orientationFactor,
  equation: {
    algorithm: 'sum of the shares times the fourth power of the cosine of their angle, over the sum of the shares',
  },
  inputs: {
    directions: {
      symbol: 'directions',
      kind: 'list',
      name: 'directions of the fibres',
      columns: { angle: 'angle', share: 'number' },
    },
  },
  output: { symbol: 'eta_0', kind: 'number', name: 'orientation factor' },
  sources: [{ key: 'krenchel', locator: 'efficiency of reinforcement, as recalled' }],
  evidence: { form: { tag: 'recalled', derived: 'mean over all directions in a plane and in space' } },
  limits: [],
});

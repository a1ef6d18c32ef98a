import { below, formula, positive, within } from '../formula/index.js';
import type { GaugePressure, Length, Modulus } from '../quantity/index.js';

export interface RingBucklingInput {
  readonly outsideDiameter: Length;
  readonly wallThickness: Length;
  readonly modulus: Modulus;
  readonly poissonRatio: number;
}

/**
 * External pressure at which a long, perfectly round pipe buckles elastically into two lobes (Bresse, Bryan).
 *
 * $$P_b = \frac{2 E}{1 - \nu^2} \left(\frac{t}{D}\right)^3$$
 *
 * @param input.outsideDiameter D, outside diameter of the pipe [m], > 0
 * @param input.wallThickness t, wall thickness [m], > 0 and < D/2
 * @param input.modulus E, modulus of the pipe [Pa], > 0
 * @param input.poissonRatio nu, Poisson's ratio, 0 to 0.5
 * @returns external pressure at buckling [Pa]
 * @throws CalculationError `invalid-input`
 * @remarks Taken with the outside diameter, which lies below the form with the mean diameter. No out-of-roundness
 *   and no yield: real pipe gives way sooner, so a factor belongs to it. A short loaded length or stiff ends would
 *   raise it and are not counted.
 * @see Young and Budynas, Roark's Formulas for Stress and Strain, as recalled
 */
export function ringBuckling(input: RingBucklingInput): GaugePressure {
  const { outsideDiameter: D, wallThickness: t, modulus: E, poissonRatio: nu } = input;
  positive(D, 'outsideDiameter', 'm');
  positive(t, 'wallThickness', 'm');
  below(t, D / 2, 'half the outside diameter', 'wallThickness', 'm');
  positive(E, 'modulus', 'Pa');
  within(nu, 0, 0.5, 'poissonRatio', '');
  const s = t / D;
  const pressure = (2 * E * s * s * s) / (1 - nu * nu);
  positive(pressure, 'buckling pressure', 'Pa');
  return pressure as GaugePressure;
}

export const ringBucklingFormula = /* @__PURE__ */ formula<RingBucklingInput, GaugePressure>({
  id: 'mechanics/ring-buckling',
  title: 'Elastic buckling of a long pipe under external pressure',
  search: ['collapse', 'von mises buckling'],
  compute: ringBuckling,
  equation: { expression: '2 * E / (1 - nu^2) * (t / D)^3' },
  inputs: {
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter of the pipe', sample: [0.05, 1.2] },
    wallThickness: { symbol: 't', kind: 'length', name: 'wall thickness', sample: [0.001, 0.03] },
    modulus: { symbol: 'E', kind: 'modulus', name: 'modulus of the pipe', sample: [1e9, 210e9] },
    poissonRatio: { symbol: 'nu', kind: 'number', name: "Poisson's ratio", sample: [0.2, 0.4] },
  },
  output: { symbol: 'P_b', kind: 'gauge pressure', name: 'external pressure at buckling' },
  sources: [{ key: 'roark', locator: 'long tube under external pressure' }],
  evidence: { form: { tag: 'recalled', derived: 'least energy quotient of a ring over its lobes' } },
  limits: [],
});

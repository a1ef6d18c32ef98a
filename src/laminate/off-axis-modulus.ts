import { finite, formula, positive, properFraction, within } from '../formula/index.js';
import type { Angle, Modulus } from '../quantity/index.js';

export interface OffAxisModulusInput {
  readonly alongModulus: Modulus;
  readonly acrossModulus: Modulus;
  readonly shearModulus: Modulus;
  readonly poissonRatio: number;
  readonly angle: Angle;
}

/**
 * Modulus of a ply in a direction that lies off its own, free to shear.
 *
 * $$\frac{1}{E} = \frac{\cos^4\psi}{E_1} + \left(\frac{1}{G} - \frac{2\nu}{E_1}\right) \sin^2\psi \cos^2\psi +
 *   \frac{\sin^4\psi}{E_2}$$
 *
 * @param input.alongModulus   E_1, along the direction that the angle is measured from [Pa], > 0
 * @param input.acrossModulus  E_2, across it [Pa], > 0
 * @param input.shearModulus   G [Pa], > 0
 * @param input.poissonRatio   nu, loaded along, contracting across, from 0 up to, not including, 1
 * @param input.angle          psi [rad], 0 to 90 deg
 * @returns modulus [Pa]
 * @throws CalculationError `invalid-input`
 * @remarks Plies of both hands over each other keep each other from shearing and are stiffer: this is the lower value. For
 *   the other direction of the same ply exchange E_1 and E_2 and take nu E_2/E_1.
 * @see Compliance of an orthotropic lamina turned in its plane
 */
export function offAxisModulus(input: OffAxisModulusInput): Modulus {
  const { alongModulus: E1, acrossModulus: E2, shearModulus: G, poissonRatio: nu, angle: psi } = input;
  positive(E1, 'alongModulus', 'Pa');
  positive(E2, 'acrossModulus', 'Pa');
  positive(G, 'shearModulus', 'Pa');
  properFraction(nu, 'poissonRatio');
  within(psi, 0, Math.PI / 2, 'angle', 'rad');
  const [s, c] = [Math.sin(psi) ** 2, Math.cos(psi) ** 2];
  const modulus = 1 / ((c * c) / E1 + (1 / G - (2 * nu) / E1) * s * c + (s * s) / E2);
  finite(modulus, 'modulus', 'Pa');
  return modulus as Modulus;
}

export const offAxisModulusFormula = /* @__PURE__ */ formula<OffAxisModulusInput, Modulus>({
  id: 'laminate/off-axis-modulus',
  title: 'Modulus of a ply off its axis',
  search: ['fibre angle', 'helix angle'],
  compute: offAxisModulus,
  equation: {
    where: [
      { symbol: 'c', kind: 'number', expression: 'cos(psi)^2' },
      { symbol: 'q', kind: 'number', expression: 'sin(psi)^2' },
    ],
    expression: '1 / (c^2 / E_1 + (1 / G - 2 * nu / E_1) * q * c + q^2 / E_2)',
  },
  inputs: {
    alongModulus: { symbol: 'E_1', kind: 'modulus', name: 'modulus along', sample: [8e9, 80e9] },
    acrossModulus: { symbol: 'E_2', kind: 'modulus', name: 'modulus across', sample: [4e9, 40e9] },
    shearModulus: { symbol: 'G', kind: 'modulus', name: 'shear modulus in the plane', sample: [1.5e9, 6e9] },
    poissonRatio: { symbol: 'nu', kind: 'number', name: "Poisson's ratio, along to across", sample: [0, 0.4] },
    angle: { symbol: 'psi', kind: 'angle', name: 'angle off the axis', sample: [0, 0.27] },
  },
  output: { symbol: 'E', kind: 'modulus', name: 'modulus off the axis' },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'stiffness turned as a tensor and inverted' } },
  limits: [],
});

import { finite, formula, positive } from '../../formula/index.js';
import type { EnergyReleaseRate, Modulus } from '../../quantity/index.js';
import { plateModulus } from './plate-modulus.js';

export interface EnergyAtRimInput {
  readonly energyReleaseRate: EnergyReleaseRate;
  readonly hoopModulus: Modulus;
  readonly axialModulus: Modulus;
  readonly poissonRatio: number;
  readonly shearModulus: Modulus;
}

/**
 * What of an energy release rate counts in `holeResistance`, so that no place of the rim releases more than the whole of it:
 * a laminate that is not alike in all directions releases most where it is stiffest across the rim.
 *
 * $$\gamma_r = \gamma\,\frac{E^{*2}}{E' \max(E'_c, E'_a)},\qquad E^* = \frac{3 E'_c + 3 E'_a + 2 (\nu_{ca} E'_a + 2 G)}{8},
 * \qquad E'_{c,a} = \frac{E_{c,a}}{1 - \nu_{ca}^2 E_a/E_c}$$
 *
 * with E' the plate modulus of that equation, E* the exact one of a clamped circular plate, whose rim bends alike all round.
 *
 * @param input.energyReleaseRate  gamma, lower confidence limit for the bond [J/m2], > 0
 * @param input.hoopModulus        E_c [Pa], > 0
 * @param input.axialModulus       E_a [Pa], > 0
 * @param input.poissonRatio       nu_ca, 0 to 1
 * @param input.shearModulus       G, of the laminate [Pa], > 0
 * @returns energy release rate [J/m2], at most gamma
 * @throws CalculationError `invalid-input`
 * @remarks Exact for bending alone; shear and the half crack, which release alike all round, are taken with it, on the safe
 *   side by 5 to 15 per cent. A gamma that was found with `holeResistance` over holes or seals of like proportion holds this
 *   already.
 */
export function energyAtRim(input: EnergyAtRimInput): EnergyReleaseRate {
  const { energyReleaseRate: gamma, hoopModulus: Ec, axialModulus: Ea, poissonRatio: nu, shearModulus: G } = input;
  positive(gamma, 'energyReleaseRate', 'J/m2');
  const Ep = plateModulus(input);
  positive(G, 'shearModulus', 'Pa');
  const free = 1 - (nu * nu * Ea) / Ec;
  const [round, along] = [Ec / free, Ea / free];
  const plate = (3 * round + 3 * along + 2 * (nu * along + 2 * G)) / 8;
  const energy = gamma * Math.min(1, (plate / Ep) * (plate / Math.max(round, along)));
  finite(energy, 'energy release rate', 'J/m2');
  return energy as EnergyReleaseRate;
}

export const energyAtRimFormula = /* @__PURE__ */ formula<EnergyAtRimInput, EnergyReleaseRate>({
  id: 'laminate/energy-at-rim',
  title: 'Energy release rate that counts at the worst place of a rim',
  compute: energyAtRim,
  equation: {
    where: [
      { symbol: 'f_n', kind: 'number', expression: '1 - nu_ca^2 * E_a / E_c' },
      { symbol: 'E_p', kind: 'modulus', expression: 'sqrt(E_a * E_c) / f_n' },
      { symbol: 'E_r', kind: 'modulus', expression: 'E_c / f_n' },
      { symbol: 'E_x', kind: 'modulus', expression: 'E_a / f_n' },
      { symbol: 'E_s', kind: 'modulus', expression: '(3 * E_r + 3 * E_x + 2 * (nu_ca * E_x + 2 * G)) / 8' },
    ],
    expression: 'gamma * min(1, E_s^2 / (E_p * max(E_r, E_x)))',
  },
  inputs: {
    energyReleaseRate: { symbol: 'gamma', kind: 'energy release rate', name: 'energy release rate', sample: [50, 500] },
    hoopModulus: { symbol: 'E_c', kind: 'modulus', name: 'hoop modulus of the laminate', sample: [8e9, 80e9] },
    axialModulus: { symbol: 'E_a', kind: 'modulus', name: 'axial modulus of the laminate', sample: [4e9, 40e9] },
    poissonRatio: { symbol: 'nu_ca', kind: 'number', name: "Poisson's ratio, hoop to axial", sample: [0, 0.4] },
    shearModulus: { symbol: 'G', kind: 'modulus', name: 'shear modulus of the laminate', sample: [1e9, 10e9] },
  },
  output: { symbol: 'gamma_r', kind: 'energy release rate', name: 'energy release rate at the rim' },
  sources: [],
  evidence: {
    form: {
      tag: 'chosen',
      derived:
        'clamped orthotropic circular plate, whose deflection is that of an isotropic one; energy of bending at the rim',
    },
  },
  limits: [],
});

import { finite, formula } from '../../formula/index.js';
import {
  acrossCompression,
  acrossModulus,
  acrossStress,
  acrossTension,
  alongCompression,
  alongModulus,
  alongStress,
  alongTension,
  poissonRatio,
  shearModulus,
  shearStrength,
  shearStress,
} from './declared-inputs.js';
import { checkPly, type PlyConstants } from './ply.js';
import { checkStrengths, checkStress, type PlyStrengths, type PlyStress, shareOf } from './strengths.js';

export interface MaximumStrainRatioInput extends PlyConstants, PlyStrengths, PlyStress {}

/**
 * How many times the stress of a ply could be before one of its strains meets its allowable, strength over modulus.
 *
 * $$R = \min\left(\frac{X/E_1}{|\varepsilon_1|}, \frac{Y/E_2}{|\varepsilon_2|}, \frac{S/G_{12}}{|\gamma_{12}|}\right)$$
 *
 * @param input.alongStress        sigma_1 [Pa], of either sign
 * @param input.acrossStress       sigma_2 [Pa], of either sign
 * @param input.shearStress        tau_12 [Pa], of either sign
 * @param input.alongTension       X_t [Pa], > 0
 * @param input.alongCompression   X_c [Pa], > 0
 * @param input.acrossTension      Y_t [Pa], > 0
 * @param input.acrossCompression  Y_c [Pa], > 0
 * @param input.shearStrength      S [Pa], > 0
 * @param input.alongModulus       E_1 [Pa], > 0
 * @param input.acrossModulus      E_2 [Pa], > 0
 * @param input.shearModulus       G_12 [Pa], > 0
 * @param input.poissonRatio       nu_12, from 0 to below 1 and sqrt(E_1/E_2)
 * @returns strength ratio; below 1 the ply has failed
 * @throws CalculationError `invalid-input`
 * @remarks Nearest to how a repair is held, by strains of the laminate. For information.
 * @see Kaw, Mechanics of Composite Materials, chapter 2
 */
export function maximumStrainRatio(input: MaximumStrainRatioInput): number {
  const { alongModulus: E1, acrossModulus: E2, poissonRatio: nu, alongStress: s1, acrossStress: s2 } = input;
  checkPly(input);
  checkStrengths(input);
  checkStress(input);
  // Strains times the modulus of their direction, so that the strengths are the limits.
  const used = Math.max(
    shareOf(s1 - nu * s2, input.alongTension, input.alongCompression),
    shareOf(s2 - nu * (E2 / E1) * s1, input.acrossTension, input.acrossCompression),
    Math.abs(input.shearStress) / input.shearStrength,
  );
  finite(1 / used, 'strength ratio', '');
  return 1 / used;
}

export const maximumStrainRatioFormula = /* @__PURE__ */ formula<MaximumStrainRatioInput, number>({
  id: 'laminate/maximum-strain-ratio',
  title: 'Strength ratio of a ply by its largest strain',
  search: ['failure criterion'],
  compute: maximumStrainRatio,
  equation: {
    where: [
      { symbol: 'e_1', kind: 'stress', expression: 'sigma_1 - nu_12 * sigma_2' },
      { symbol: 'e_2', kind: 'stress', expression: 'sigma_2 - nu_12 * E_2 / E_1 * sigma_1' },
      { symbol: 'u_3', kind: 'number', expression: 'abs(tau_12) * G_12 / (S * G_12)' },
    ],
    expression: '1 / max(e_1 / X_t, -e_1 / X_c, e_2 / Y_t, -e_2 / Y_c, u_3)',
  },
  inputs: {
    alongStress,
    acrossStress,
    shearStress,
    alongTension,
    alongCompression,
    acrossTension,
    acrossCompression,
    shearStrength,
    alongModulus,
    acrossModulus,
    shearModulus,
    poissonRatio,
  },
  output: { symbol: 'R', kind: 'number', name: 'strength ratio' },
  sources: [{ key: 'kaw', locator: 'chapter 2, as slides quote it' }],
  evidence: { form: { tag: 'secondary', derived: 'criterion met by the strains of the stress times the ratio' } },
  limits: [],
});

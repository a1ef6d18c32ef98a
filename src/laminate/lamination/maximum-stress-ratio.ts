import { finite, formula } from '../../formula/index.js';
import {
  acrossCompression,
  acrossStress,
  acrossTension,
  alongCompression,
  alongStress,
  alongTension,
  shearStrength,
  shearStress,
} from './declared-inputs.js';
import { checkStrengths, checkStress, type PlyStrengths, type PlyStress, shareOf } from './strengths.js';

export interface MaximumStressRatioInput extends PlyStrengths, PlyStress {}

/**
 * How many times the stress of a ply could be before one of its components meets its strength.
 *
 * $$R = \min\left(\frac{X}{|\sigma_1|}, \frac{Y}{|\sigma_2|}, \frac{S}{|\tau_{12}|}\right)$$
 *
 * @param input.alongStress        sigma_1 [Pa], of either sign
 * @param input.acrossStress       sigma_2 [Pa], of either sign
 * @param input.shearStress        tau_12 [Pa], of either sign
 * @param input.alongTension       X_t [Pa], > 0
 * @param input.alongCompression   X_c [Pa], > 0
 * @param input.acrossTension      Y_t [Pa], > 0
 * @param input.acrossCompression  Y_c [Pa], > 0
 * @param input.shearStrength      S [Pa], > 0
 * @returns strength ratio; below 1 the ply has failed
 * @throws CalculationError `invalid-input`
 * @remarks For information: a repair is held to strains of the laminate.
 * @see Kaw, Mechanics of Composite Materials, chapter 2
 */
export function maximumStressRatio(input: MaximumStressRatioInput): number {
  checkStrengths(input);
  checkStress(input);
  const used = Math.max(
    shareOf(input.alongStress, input.alongTension, input.alongCompression),
    shareOf(input.acrossStress, input.acrossTension, input.acrossCompression),
    Math.abs(input.shearStress) / input.shearStrength,
  );
  const ratio = 1 / used;
  finite(ratio, 'strength ratio', '');
  return ratio;
}

export const maximumStressRatioFormula = /* @__PURE__ */ formula<MaximumStressRatioInput, number>({
  id: 'laminate/maximum-stress-ratio',
  title: 'Strength ratio of a ply by its largest stress',
  search: ['failure criterion'],
  compute: maximumStressRatio,
  equation: {
    where: [
      { symbol: 'u_1', kind: 'number', expression: 'max(sigma_1 / X_t, -sigma_1 / X_c)' },
      { symbol: 'u_2', kind: 'number', expression: 'max(sigma_2 / Y_t, -sigma_2 / Y_c)' },
    ],
    expression: '1 / max(u_1, u_2, abs(tau_12) / S)',
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
  },
  output: { symbol: 'R', kind: 'number', name: 'strength ratio' },
  sources: [{ key: 'kaw', locator: 'chapter 2, as slides quote it' }],
  evidence: { form: { tag: 'secondary', derived: 'criterion met by the stress times the ratio' } },
  limits: [],
});

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
import { checkStrengths, checkStress, type PlyStrengths, type PlyStress } from './strengths.js';
import { tsaiWuUse } from './tsai-wu.js';

export interface TsaiWuRatioInput extends PlyStrengths, PlyStress {}

/**
 * How many times the stress of a ply could be by the quadratic criterion of Tsai and Wu.
 *
 * $$a R^2 + b R = 1,\quad a = \frac{\sigma_1^2}{X_t X_c} + \frac{\sigma_2^2}{Y_t Y_c} + \frac{\tau_{12}^2}{S^2} -
 * \frac{\sigma_1\sigma_2}{\sqrt{X_t X_c Y_t Y_c}},\quad b = \sigma_1\left(\frac{1}{X_t} - \frac{1}{X_c}\right) +
 * \sigma_2\left(\frac{1}{Y_t} - \frac{1}{Y_c}\right)$$
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
 * @remarks With F_12 = -sqrt(F_11 F_22)/2, taken twice; one public copy of a textbook leaves the factor 2 out. For information.
 * @see Kaw, Mechanics of Composite Materials, chapter 2; Voyiadjis and Kattan, chapter 10
 */
export function tsaiWuRatio(input: TsaiWuRatioInput): number {
  checkStrengths(input);
  checkStress(input);
  const ratio = 1 / tsaiWuUse(input, input);
  finite(ratio, 'strength ratio', '');
  return ratio;
}

export const tsaiWuRatioFormula = /* @__PURE__ */ formula<TsaiWuRatioInput, number>({
  id: 'laminate/tsai-wu-ratio',
  title: 'Strength ratio of a ply by Tsai and Wu',
  search: ['failure criterion'],
  compute: tsaiWuRatio,
  equation: {
    where: [
      {
        symbol: 'a',
        kind: 'number',
        expression:
          'sigma_1^2 / (X_t * X_c) + sigma_2^2 / (Y_t * Y_c) + (tau_12 / S)^2 - sigma_1 * sigma_2 / sqrt(X_t * X_c * Y_t * Y_c)',
      },
      { symbol: 'b', kind: 'number', expression: 'sigma_1 * (1 / X_t - 1 / X_c) + sigma_2 * (1 / Y_t - 1 / Y_c)' },
    ],
    expression: '2 / (b + sqrt(b^2 + 4 * a))',
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

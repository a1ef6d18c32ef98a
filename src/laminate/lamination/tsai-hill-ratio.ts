import { finite, formula, oneOf } from '../../formula/index.js';
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

const choices = ['tension throughout', 'by sign'] as const;

/** Which strengths the criterion takes: the two forms can differ by half and more. */
export type TsaiHillStrengths = (typeof choices)[number];

export interface TsaiHillRatioInput extends PlyStrengths, PlyStress {
  readonly strengths: TsaiHillStrengths;
}

/**
 * How many times the stress of a ply could be by the quadratic criterion of Tsai and Hill.
 *
 * $$\frac{1}{R^2} = \left(\frac{\sigma_1}{X}\right)^2 - \frac{\sigma_1\sigma_2}{X^2} + \left(\frac{\sigma_2}{Y}\right)^2 +
 * \left(\frac{\tau_{12}}{S}\right)^2$$
 *
 * @param input.alongStress        sigma_1 [Pa], of either sign
 * @param input.acrossStress       sigma_2 [Pa], of either sign
 * @param input.shearStress        tau_12 [Pa], of either sign
 * @param input.alongTension       X_t [Pa], > 0
 * @param input.alongCompression   X_c [Pa], > 0
 * @param input.acrossTension      Y_t [Pa], > 0
 * @param input.acrossCompression  Y_c [Pa], > 0
 * @param input.shearStrength      S [Pa], > 0
 * @param input.strengths          `tension throughout`, X_t and Y_t, or `by sign`
 * @returns strength ratio; below 1 the ply has failed
 * @throws CalculationError `invalid-input`
 * @remarks For information: coupon data and loads off the hoop.
 * @see Kaw, Mechanics of Composite Materials, chapter 2
 */
export function tsaiHillRatio(input: TsaiHillRatioInput): number {
  const { alongStress: s1, acrossStress: s2, shearStress: tau, strengths } = input;
  checkStrengths(input);
  checkStress(input);
  oneOf(strengths, choices, 'strengths');
  const bySign = strengths === 'by sign';
  const X = bySign && s1 < 0 ? input.alongCompression : input.alongTension;
  const Y = bySign && s2 < 0 ? input.acrossCompression : input.acrossTension;
  const [x, y, s] = [s1 / X, s2 / Y, tau / input.shearStrength];
  const ratio = 1 / Math.sqrt(x * x - x * (s2 / X) + y * y + s * s);
  finite(ratio, 'strength ratio', '');
  return ratio;
}

export const tsaiHillRatioFormula = /* @__PURE__ */ formula<TsaiHillRatioInput, number>({
  id: 'laminate/tsai-hill-ratio',
  title: 'Strength ratio of a ply by Tsai and Hill',
  search: ['failure criterion'],
  compute: tsaiHillRatio,
  equation: {
    branches: [
      {
        when: 'strengths == "by sign" and sigma_1 < 0 and sigma_2 < 0',
        expression: '1 / sqrt((sigma_1 / X_c)^2 - sigma_1 * sigma_2 / X_c^2 + (sigma_2 / Y_c)^2 + (tau_12 / S)^2)',
      },
      {
        when: 'strengths == "by sign" and sigma_1 < 0',
        expression: '1 / sqrt((sigma_1 / X_c)^2 - sigma_1 * sigma_2 / X_c^2 + (sigma_2 / Y_t)^2 + (tau_12 / S)^2)',
      },
      {
        when: 'strengths == "by sign" and sigma_2 < 0',
        expression: '1 / sqrt((sigma_1 / X_t)^2 - sigma_1 * sigma_2 / X_t^2 + (sigma_2 / Y_c)^2 + (tau_12 / S)^2)',
      },
      { expression: '1 / sqrt((sigma_1 / X_t)^2 - sigma_1 * sigma_2 / X_t^2 + (sigma_2 / Y_t)^2 + (tau_12 / S)^2)' },
    ],
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
    strengths: {
      symbol: 'strengths',
      kind: 'choice',
      name: 'strengths taken',
      choices: ['tension throughout', 'by sign'],
    },
  },
  output: { symbol: 'R', kind: 'number', name: 'strength ratio' },
  sources: [{ key: 'kaw', locator: 'chapter 2, as slides quote it' }],
  evidence: { form: { tag: 'secondary', derived: 'criterion met by the stress times the ratio' } },
  limits: [],
});

import { finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { Length, Strain, Stress, TemperatureDifference, ThermalExpansion } from '../../quantity/index.js';
import {
  bondShearModulus,
  bondThickness,
  innerExpansion,
  innerModulus,
  innerThickness,
  outerExpansion,
  outerModulus,
  outerThickness,
  temperatureChange,
} from './declared-inputs.js';
import { checkJoint, type Joint, lagOf } from './joint.js';

export interface WrapEndShearInput extends Joint {
  readonly wrapLength: Length;
  readonly pipeStrain: Strain;
  readonly innerExpansion: ThermalExpansion;
  readonly outerExpansion: ThermalExpansion;
  readonly temperatureChange: TemperatureDifference;
}

/**
 * Shear stress in the bond at the blunt ends of a wrap round a pipe that strains along, the inner layer the pipe.
 *
 * $$\tau = \max(|\varepsilon + \varepsilon_T|, |\varepsilon_T|)\,\frac{\omega}{1/(E_i t_i) + 1/(E_o t_o)}\tanh\frac{\omega l}{2},
 * \qquad \varepsilon_T = (\alpha_i - \alpha_o)\,\Delta T$$
 *
 * @param input.innerModulus      E_i [Pa], > 0
 * @param input.innerThickness    t_i [m], > 0; half the thickness of a layer that is bonded on both its faces (double lap)
 * @param input.outerModulus      E_o [Pa], > 0
 * @param input.outerThickness    t_o, of one outer layer [m], > 0
 * @param input.bondShearModulus  G [Pa], > 0
 * @param input.bondThickness     h [m], > 0
 * @param input.wrapLength         l, of the wrap [m], > 0
 * @param input.pipeStrain         eps, strain of the bare pipe beside the wrap by its load, that may be absent, >= 0
 * @param input.innerExpansion     alpha_i [1/K], of either sign
 * @param input.outerExpansion     alpha_o [1/K], of either sign
 * @param input.temperatureChange  dT since the bond set [K], of either sign
 * @returns shear stress [Pa]
 * @throws CalculationError `invalid-input`
 * @remarks The load may be absent and gives no relief. Over a sound pipe; where the pipe parts under the wrap all of the load passes
 *   the bond, `lapShearPeak`. A taper lowers it: `taperedEndShear`.
 * @see One side of a double lap, as recalled
 */
export function wrapEndShear(input: WrapEndShearInput): Stress {
  const { wrapLength: l, pipeStrain: eps } = input;
  checkJoint(input);
  positive(l, 'wrapLength', 'm');
  nonNegative(eps, 'pipeStrain', '');
  finite(input.innerExpansion, 'innerExpansion', '1/K');
  finite(input.outerExpansion, 'outerExpansion', '1/K');
  finite(input.temperatureChange, 'temperatureChange', 'K');
  const { inner, outer, lag } = lagOf(input);
  const grown = (input.innerExpansion - input.outerExpansion) * input.temperatureChange;
  const apart = Math.max(Math.abs(eps + grown), Math.abs(grown));
  const stress = ((apart * lag) / (inner + outer)) * Math.tanh((lag * l) / 2);
  finite(stress, 'shear stress', 'Pa');
  return stress as Stress;
}

export const wrapEndShearFormula = /* @__PURE__ */ formula<WrapEndShearInput, Stress>({
  id: 'laminate/wrap-end-shear',
  title: 'Shear stress at the blunt end of a wrap',
  search: ['peel', 'debond', 'end of the wrap'],
  compute: wrapEndShear,
  equation: {
    where: [
      { symbol: 'w', kind: 'number', expression: 'sqrt(G / h * (1 / (E_i * t_i) + 1 / (E_o * t_o))) * l / 2' },
      { symbol: 'T', kind: 'number', expression: '(alpha_i - alpha_o) * dT' },
    ],
    expression: 'max(abs(eps + T), abs(T)) * 2 * w / l / (1 / (E_i * t_i) + 1 / (E_o * t_o)) * tanh(w)',
  },
  inputs: {
    innerModulus,
    innerThickness,
    outerModulus,
    outerThickness,
    bondShearModulus,
    bondThickness,
    wrapLength: { symbol: 'l', kind: 'length', name: 'length of the wrap', sample: [0.1, 0.6] },
    pipeStrain: { symbol: 'eps', kind: 'strain', name: 'strain of the bare pipe', sample: [0, 0.001] },
    innerExpansion,
    outerExpansion,
    temperatureChange,
  },
  output: { symbol: 'tau', kind: 'stress', name: 'shear stress at the end' },
  sources: [
    { key: 'shigley', locator: 'bonded double lap, as recalled' },
    { key: 'mechanics-notes', locator: 'bonded joints' },
  ],
  evidence: { form: { tag: 'recalled', derived: 'layers and bond as springs in a row' } },
  limits: [],
});

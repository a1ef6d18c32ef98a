import { finite, formula, nonNegative, positive, within } from '../../formula/index.js';
import type { Length, LineLoad, Stress, TemperatureDifference, ThermalExpansion } from '../../quantity/index.js';
import {
  bondShearModulus,
  bondThickness,
  innerExpansion,
  innerModulus,
  innerThickness,
  lineLoad,
  outerExpansion,
  outerModulus,
  outerThickness,
  overlap,
  temperatureChange,
} from './declared-inputs.js';
import { checkJoint, type Joint, lagOf } from './joint.js';

export interface LapShearStressInput extends Joint {
  readonly overlap: Length;
  readonly lineLoad: LineLoad;
  readonly innerExpansion: ThermalExpansion;
  readonly outerExpansion: ThermalExpansion;
  readonly temperatureChange: TemperatureDifference;
  readonly place: number;
}

/**
 * Shear stress in a bond that passes a load from one layer to another, at one place, with that of a change of temperature
 * (Volkersen).
 *
 * $$\tau = \frac{N\omega}{2}\left[\frac{\cosh\omega x}{\sinh(\omega l/2)} + \frac{E_i t_i - E_o t_o}{E_i t_i + E_o t_o}
 * \frac{\sinh\omega x}{\cosh(\omega l/2)}\right] + \frac{(\alpha_o - \alpha_i)\,\Delta T\,\omega}{1/(E_i t_i) + 1/(E_o t_o)}
 * \frac{\sinh\omega x}{\cosh(\omega l/2)}$$
 *
 * @param input.innerModulus      E_i [Pa], > 0
 * @param input.innerThickness    t_i [m], > 0; half the thickness of a layer that is bonded on both its faces (double lap)
 * @param input.outerModulus      E_o [Pa], > 0
 * @param input.outerThickness    t_o, of one outer layer [m], > 0
 * @param input.bondShearModulus  G [Pa], > 0
 * @param input.bondThickness     h [m], > 0
 * @param input.overlap            l [m], > 0
 * @param input.lineLoad           N, passed from the inner to the outer layer, for each width [N/m], >= 0
 * @param input.innerExpansion     alpha_i [1/K], of either sign
 * @param input.outerExpansion     alpha_o [1/K], of either sign
 * @param input.temperatureChange  dT since the bond set [K], of either sign
 * @param input.place              2 x/l: 1 at the end where the outer layer is loaded, -1 where the inner one is, 0 between
 * @returns shear stress [Pa], of either sign
 * @throws CalculationError `invalid-input`
 * @remarks Elastic, without bending, which a pipe's hoop holds back. A double lap is the same with half of the inner layer and
 *   half of the load.
 * @see Volkersen; Budynas and Nisbett, example 9-7, as recalled
 */
export function lapShearStress(input: LapShearStressInput): Stress {
  const { overlap: l, lineLoad: N, place } = input;
  checkJoint(input);
  positive(l, 'overlap', 'm');
  nonNegative(N, 'lineLoad', 'N/m');
  finite(input.innerExpansion, 'innerExpansion', '1/K');
  finite(input.outerExpansion, 'outerExpansion', '1/K');
  finite(input.temperatureChange, 'temperatureChange', 'K');
  within(place, -1, 1, 'place', '');
  const { inner, outer, lag } = lagOf(input);
  const c = (lag * l) / 2;
  // By falling powers of e, which no length of bond takes out of range.
  const [near, far, ends] = [Math.exp(c * (place - 1)), Math.exp(-c * (place + 1)), Math.exp(-2 * c)];
  const even = (near + far) / -Math.expm1(-2 * c);
  const odd = (near - far) / (1 + ends);
  const grown = (input.outerExpansion - input.innerExpansion) * input.temperatureChange;
  const flexibility = inner + outer;
  const stress = ((N * lag) / 2) * (even + ((outer - inner) / flexibility) * odd) + ((grown * lag) / flexibility) * odd;
  finite(stress, 'shear stress', 'Pa');
  return stress as Stress;
}

export const lapShearStressFormula = /* @__PURE__ */ formula<LapShearStressInput, Stress>({
  id: 'laminate/lap-shear-stress',
  title: 'Shear stress in a bond',
  search: ['adhesive', 'lap joint', 'bond stress'],
  compute: lapShearStress,
  equation: {
    where: [
      { symbol: 'w', kind: 'number', expression: 'sqrt(G / h * (1 / (E_i * t_i) + 1 / (E_o * t_o))) * l / 2' },
      { symbol: 'b', kind: 'number', expression: '(E_i * t_i - E_o * t_o) / (E_i * t_i + E_o * t_o)' },
      {
        symbol: 'T',
        kind: 'number',
        expression: '(alpha_o - alpha_i) * dT * (E_i * t_i * E_o * t_o) / (E_i * t_i + E_o * t_o) / N',
      },
    ],
    expression: 'N * w / l * (cosh(w * z) / sinh(w) + (b + 2 * T) * sinh(w * z) / cosh(w))',
  },
  inputs: {
    innerModulus,
    innerThickness,
    outerModulus,
    outerThickness,
    bondShearModulus,
    bondThickness,
    overlap,
    lineLoad,
    innerExpansion,
    outerExpansion,
    temperatureChange,
    place: { symbol: 'z', kind: 'number', name: 'place along the bond', sample: [-1, 1] },
  },
  output: { symbol: 'tau', kind: 'stress', name: 'shear stress' },
  sources: [
    { key: 'shigley', locator: 'bonded double lap, as recalled' },
    { key: 'mechanics-notes', locator: 'bonded joints' },
  ],
  evidence: { form: { tag: 'recalled', derived: 'layers and bond as springs in a row' } },
  limits: [],
});

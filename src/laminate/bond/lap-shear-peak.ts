import { finite, formula, nonNegative, positive } from '../../formula/index.js';
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

export interface LapShearPeakInput extends Joint {
  readonly overlap: Length;
  readonly lineLoad: LineLoad;
  readonly innerExpansion: ThermalExpansion;
  readonly outerExpansion: ThermalExpansion;
  readonly temperatureChange: TemperatureDifference;
}

/**
 * Largest shear stress in a bond that passes a load from one layer to another: that at the worse of its ends, with a change of
 * temperature (Volkersen).
 *
 * $$\tau_{max} = \frac{N\omega}{2}\coth\frac{\omega l}{2} + \left|\frac{N\omega}{2}\frac{E_i t_i - E_o t_o}{E_i t_i + E_o t_o} +
 * \frac{(\alpha_o - \alpha_i)\,\Delta T\,\omega}{1/(E_i t_i) + 1/(E_o t_o)}\right|\tanh\frac{\omega l}{2}$$
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
 * @returns shear stress [Pa]
 * @throws CalculationError `invalid-input`
 * @remarks The mean over a long bond says little of its strength: the peak grows against it with the length.
 * @see Volkersen; Budynas and Nisbett, example 9-7, as recalled
 */
export function lapShearPeak(input: LapShearPeakInput): Stress {
  const { overlap: l, lineLoad: N } = input;
  checkJoint(input);
  positive(l, 'overlap', 'm');
  nonNegative(N, 'lineLoad', 'N/m');
  finite(input.innerExpansion, 'innerExpansion', '1/K');
  finite(input.outerExpansion, 'outerExpansion', '1/K');
  finite(input.temperatureChange, 'temperatureChange', 'K');
  const { inner, outer, lag } = lagOf(input);
  const flexibility = inner + outer;
  const tanh = Math.tanh((lag * l) / 2);
  const grown = (input.outerExpansion - input.innerExpansion) * input.temperatureChange;
  const uneven = ((N / 2) * (outer - inner) + grown) / flexibility;
  const stress = (N * lag) / 2 / tanh + Math.abs(uneven * lag) * tanh;
  finite(stress, 'shear stress', 'Pa');
  return stress as Stress;
}

export const lapShearPeakFormula = /* @__PURE__ */ formula<LapShearPeakInput, Stress>({
  id: 'laminate/lap-shear-peak',
  title: 'Largest shear stress in a bond',
  search: ['volkersen', 'adhesive', 'lap joint'],
  compute: lapShearPeak,
  equation: {
    where: [
      { symbol: 'w', kind: 'number', expression: 'sqrt(G / h * (1 / (E_i * t_i) + 1 / (E_o * t_o))) * l / 2' },
      {
        symbol: 'U',
        kind: 'line load',
        expression:
          '(N / 2 * (1 / (E_o * t_o) - 1 / (E_i * t_i)) + (alpha_o - alpha_i) * dT) / (1 / (E_i * t_i) + 1 / (E_o * t_o))',
      },
    ],
    expression: '2 * w / l * (N / 2 / tanh(w) + abs(U) * tanh(w))',
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
  },
  output: { symbol: 'tau_max', kind: 'stress', name: 'largest shear stress' },
  sources: [
    { key: 'shigley', locator: 'bonded double lap, as recalled' },
    { key: 'mechanics-notes', locator: 'bonded joints' },
  ],
  evidence: { form: { tag: 'recalled', derived: 'layers and bond as springs in a row' } },
  limits: [],
});

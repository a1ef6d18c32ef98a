import { finite, formula, positive } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';
import {
  bondShearModulus,
  bondThickness,
  innerModulus,
  innerThickness,
  outerModulus,
  outerThickness,
  overlap,
} from './declared-inputs.js';
import { checkJoint, type Joint, lagOf } from './joint.js';

export interface LapPeakOverMeanInput extends Joint {
  readonly overlap: Length;
}

/**
 * Largest shear stress of a bond between layers alike in stiffness, over its mean (Volkersen).
 *
 * $$\frac{\tau_{max}}{\bar\tau} = \frac{\omega l}{2}\coth\frac{\omega l}{2}$$
 *
 * @param input.innerModulus      E_i [Pa], > 0
 * @param input.innerThickness    t_i [m], > 0; half the thickness of a layer that is bonded on both its faces (double lap)
 * @param input.outerModulus      E_o [Pa], > 0
 * @param input.outerThickness    t_o, of one outer layer [m], > 0
 * @param input.bondShearModulus  G [Pa], > 0
 * @param input.bondThickness     h [m], > 0
 * @param input.overlap           l [m], > 0
 * @returns ratio, 1 and above
 * @throws CalculationError `invalid-input`
 * @remarks It grows with the length without end, so the mean over a long bond is no measure of strength. Layers of unlike
 *   stiffness have more: `lapShearPeak`.
 * @see Notes on bonded joints
 */
export function lapPeakOverMean(input: LapPeakOverMeanInput): number {
  checkJoint(input);
  positive(input.overlap, 'overlap', 'm');
  const c = (lagOf(input).lag * input.overlap) / 2;
  const ratio = c / Math.tanh(c);
  finite(ratio, 'ratio', '');
  return ratio;
}

export const lapPeakOverMeanFormula = /* @__PURE__ */ formula<LapPeakOverMeanInput, number>({
  id: 'laminate/lap-peak-over-mean',
  title: 'Largest over mean shear stress in a bond',
  search: ['volkersen', 'adhesive', 'lap joint', 'stress concentration'],
  compute: lapPeakOverMean,
  equation: {
    where: [{ symbol: 'w', kind: 'number', expression: 'sqrt(G / h * (1 / (E_i * t_i) + 1 / (E_o * t_o))) * l / 2' }],
    expression: 'w / tanh(w)',
  },
  inputs: { innerModulus, innerThickness, outerModulus, outerThickness, bondShearModulus, bondThickness, overlap },
  output: { symbol: 'k', kind: 'number', name: 'largest over mean shear stress' },
  sources: [
    { key: 'shigley', locator: 'bonded double lap, as recalled' },
    { key: 'mechanics-notes', locator: 'bonded joints' },
  ],
  evidence: { form: { tag: 'recalled', derived: 'layers and bond as springs in a row' } },
  limits: [],
});

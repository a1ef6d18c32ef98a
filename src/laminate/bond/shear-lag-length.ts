import { finite, formula } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';
import {
  bondShearModulus,
  bondThickness,
  innerModulus,
  innerThickness,
  outerModulus,
  outerThickness,
} from './declared-inputs.js';
import { checkJoint, type Joint, lagOf } from './joint.js';

export type ShearLagLengthInput = Joint;

/**
 * Length over which the shear in a bond dies out, to 1/e (Volkersen).
 *
 * $$\lambda = \frac{1}{\omega},\qquad \omega^2 = \frac{G}{h}\left(\frac{1}{E_i t_i} + \frac{1}{E_o t_o}\right)$$
 *
 * @param input.innerModulus      E_i [Pa], > 0
 * @param input.innerThickness    t_i [m], > 0; half the thickness of a layer that is bonded on both its faces (double lap)
 * @param input.outerModulus      E_o [Pa], > 0
 * @param input.outerThickness    t_o, of one outer layer [m], > 0
 * @param input.bondShearModulus  G [Pa], > 0
 * @param input.bondThickness     h [m], > 0
 * @returns length [m]
 * @throws CalculationError `invalid-input`
 * @remarks About three of it at each end pass the load; a bond longer than five or six of it gains little.
 * @see Volkersen; Budynas and Nisbett, as recalled
 */
export function shearLagLength(input: ShearLagLengthInput): Length {
  checkJoint(input);
  const length = 1 / lagOf(input).lag;
  finite(length, 'shear-lag length', 'm');
  return length as Length;
}

export const shearLagLengthFormula = /* @__PURE__ */ formula<ShearLagLengthInput, Length>({
  id: 'laminate/shear-lag-length',
  title: 'Length over which the shear in a bond dies out',
  search: ['bond length', 'adhesive', 'volkersen'],
  compute: shearLagLength,
  equation: { expression: 'sqrt(h / (G * (1 / (E_i * t_i) + 1 / (E_o * t_o))))' },
  inputs: { innerModulus, innerThickness, outerModulus, outerThickness, bondShearModulus, bondThickness },
  output: { symbol: 'lambda', kind: 'length', name: 'shear-lag length' },
  sources: [
    { key: 'shigley', locator: 'bonded double lap, as recalled' },
    { key: 'mechanics-notes', locator: 'bonded joints' },
  ],
  evidence: { form: { tag: 'recalled', derived: 'layers and bond as springs in a row' } },
  limits: [],
});

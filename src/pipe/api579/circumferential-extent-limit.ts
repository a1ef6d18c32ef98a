import { finite, formula, positive } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';

export interface CircumferentialExtentLimitInput {
  readonly defectLength: Length;
  readonly longitudinalJointFactor?: number;
  readonly circumferentialJointFactor?: number;
}

/**
 * Widest local metal loss that the hoop check covers alone; a wider one needs a check of the axial direction too.
 *
 * $$c = 2 s \min\left(\frac{E_L}{E_C}, \frac{E_C}{E_L}\right)$$
 *
 * @param input.defectLength                s, along the pipe [m], > 0
 * @param input.longitudinalJointFactor     E_L, > 0; 1 by default
 * @param input.circumferentialJointFactor  E_C, > 0; 1 by default
 * @returns width round the pipe [m]
 * @throws CalculationError `invalid-input`
 * @remarks Copies of the standard print 2 s E_L/E_C. The balance of the hoop load that is lost over s with the end load that is
 *   lost over c gives 2 s E_C/E_L where the joints are unlike: the lesser is taken, and with joints alike both are 2 s.
 * @see API 579-1, Part 5, Level 1
 */
export function circumferentialExtentLimit(input: CircumferentialExtentLimitInput): Length {
  const { defectLength: s, longitudinalJointFactor: EL = 1, circumferentialJointFactor: EC = 1 } = input;
  positive(s, 'defectLength', 'm');
  positive(EL, 'longitudinalJointFactor', '');
  positive(EC, 'circumferentialJointFactor', '');
  const width = 2 * s * Math.min(EL / EC, EC / EL);
  finite(width, 'width', 'm');
  return width as Length;
}

export const circumferentialExtentLimitFormula = /* @__PURE__ */ formula<CircumferentialExtentLimitInput, Length>({
  id: 'pipe/circumferential-extent-limit',
  title: 'Widest metal loss that the hoop check covers',
  search: ['corrosion width', 'clock position'],
  compute: circumferentialExtentLimit,
  equation: { expression: '2 * s * min(E_L / E_C, E_C / E_L)' },
  inputs: {
    defectLength: { symbol: 's', kind: 'length', name: 'length of the defect along the pipe', sample: [0.01, 1] },
    longitudinalJointFactor: {
      symbol: 'E_L',
      kind: 'number',
      name: 'joint factor, longitudinal',
      sample: [0.6, 1],
      default: 1,
    },
    circumferentialJointFactor: {
      symbol: 'E_C',
      kind: 'number',
      name: 'joint factor, circumferential',
      sample: [0.6, 1],
      default: 1,
    },
  },
  output: { symbol: 'c_max', kind: 'length', name: 'width round the pipe' },
  sources: [{ key: 'api-579', locator: 'Part 5, Level 1' }],
  evidence: {
    form: {
      tag: 'secondary',
      derived: 'balance of the hoop load and the end load that are lost, where the joints are alike',
    },
    'joints unlike': { tag: 'chosen', note: 'the lesser of what is printed and of what the balance gives' },
  },
  limits: [],
});

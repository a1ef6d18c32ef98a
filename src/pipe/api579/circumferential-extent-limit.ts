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
 * $$c = 2 s\,\frac{E_L}{E_C}$$
 *
 * @param input.defectLength                s, along the pipe [m], > 0
 * @param input.longitudinalJointFactor     E_L, > 0; 1 by default
 * @param input.circumferentialJointFactor  E_C, > 0; 1 by default
 * @returns width round the pipe [m]
 * @throws CalculationError `invalid-input`
 * @see API 579-1, Part 5, Level 1
 */
export function circumferentialExtentLimit(input: CircumferentialExtentLimitInput): Length {
  const { defectLength: s, longitudinalJointFactor: EL = 1, circumferentialJointFactor: EC = 1 } = input;
  positive(s, 'defectLength', 'm');
  positive(EL, 'longitudinalJointFactor', '');
  positive(EC, 'circumferentialJointFactor', '');
  const width = 2 * s * (EL / EC);
  finite(width, 'width', 'm');
  return width as Length;
}

export const circumferentialExtentLimitFormula = /* @__PURE__ */ formula<CircumferentialExtentLimitInput, Length>({
  id: 'pipe/circumferential-extent-limit',
  title: 'Widest metal loss that the hoop check covers',
  compute: circumferentialExtentLimit,
  equation: { expression: '2 * s * E_L / E_C' },
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
  evidence: { form: { tag: 'secondary' } },
  limits: [],
});

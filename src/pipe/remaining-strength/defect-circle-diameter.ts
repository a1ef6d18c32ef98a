import { finite, formula, positive } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';

export interface DefectCircleDiameterInput {
  readonly defectLength: Length;
  readonly defectWidth: Length;
}

/**
 * Diameter of the circle round a defect: the diagonal of its length and its width.
 *
 * $$d = \sqrt{L^2 + c^2}$$
 *
 * @param input.defectLength  L, along the pipe [m], > 0
 * @param input.defectWidth   c, round the pipe [m], > 0
 * @returns diameter [m]
 * @throws CalculationError `invalid-input`
 * @remarks On the unrolled pipe, where the width is an arc: the circle that no hole in the defect can pass.
 */
export function defectCircleDiameter(input: DefectCircleDiameterInput): Length {
  const { defectLength: L, defectWidth: c } = input;
  positive(L, 'defectLength', 'm');
  positive(c, 'defectWidth', 'm');
  const diameter = Math.hypot(L, c);
  finite(diameter, 'diameter', 'm');
  return diameter as Length;
}

export const defectCircleDiameterFormula = /* @__PURE__ */ formula<DefectCircleDiameterInput, Length>({
  id: 'pipe/defect-circle-diameter',
  title: 'Circle round the defect',
  compute: defectCircleDiameter,
  equation: { expression: 'sqrt(L^2 + c^2)' },
  inputs: {
    defectLength: { symbol: 'L', kind: 'length', name: 'length of the defect along the pipe', sample: [0.005, 1] },
    defectWidth: { symbol: 'c', kind: 'length', name: 'width of the defect round the pipe', sample: [0.005, 1] },
  },
  output: { symbol: 'd', kind: 'length', name: 'diameter of the circle' },
  sources: [],
  evidence: { form: { tag: 'practice', derived: 'diagonal of a rectangle' } },
  limits: [],
});

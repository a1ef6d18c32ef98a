import { finite, formula, positive } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';

export interface DefectAspectRatioInput {
  readonly defectLength: Length;
  readonly defectWidth: Length;
}

/**
 * How long a defect is beside its breadth, whichever way it lies.
 *
 * $$a = \frac{\max(L, c)}{\min(L, c)}$$
 *
 * @param input.defectLength  L, along the pipe [m], > 0
 * @param input.defectWidth   c, round the pipe [m], > 0
 * @returns ratio, 1 or above
 * @throws CalculationError `invalid-input`
 */
export function defectAspectRatio(input: DefectAspectRatioInput): number {
  const { defectLength: L, defectWidth: c } = input;
  positive(L, 'defectLength', 'm');
  positive(c, 'defectWidth', 'm');
  const ratio = Math.max(L, c) / Math.min(L, c);
  finite(ratio, 'ratio', '');
  return ratio;
}

export const defectAspectRatioFormula = /* @__PURE__ */ formula<DefectAspectRatioInput, number>({
  id: 'pipe/defect-aspect-ratio',
  title: 'Longer over shorter extent of the defect',
  compute: defectAspectRatio,
  equation: { expression: 'max(L, c) / min(L, c)' },
  inputs: {
    defectLength: { symbol: 'L', kind: 'length', name: 'length of the defect along the pipe', sample: [0.005, 1] },
    defectWidth: { symbol: 'c', kind: 'length', name: 'width of the defect round the pipe', sample: [0.005, 1] },
  },
  output: { symbol: 'a', kind: 'number', name: 'longer over shorter extent' },
  sources: [],
  evidence: { form: { tag: 'practice' } },
  limits: [],
});

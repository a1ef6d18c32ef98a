import { formula, nonNegative, positive } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';

export interface OverlapLeftInput {
  readonly totalLength: Length;
  readonly defectLength: Length;
  readonly taperLength: Length;
}

/**
 * Overlap that a laminate of a given length leaves on each side, when it lies centred on the defect; 0 where none is left.
 *
 * $$l_{over} = \max\left(\frac{l - l_{defect} - 2 l_{taper}}{2},\ 0\right)$$
 *
 * @param input.totalLength   l, from one tapered end to the other [m], > 0
 * @param input.defectLength  l_defect, along the pipe at the end of life [m], >= 0
 * @param input.taperLength   l_taper, of one end [m], >= 0
 * @returns overlap [m]
 * @throws CalculationError `invalid-input`
 * @remarks `axialExtent` solved for the overlap. A laminate that lies off centre has less on one side: measure that one.
 */
export function overlapLeft(input: OverlapLeftInput): Length {
  const { totalLength: l, defectLength, taperLength } = input;
  positive(l, 'totalLength', 'm');
  nonNegative(defectLength, 'defectLength', 'm');
  nonNegative(taperLength, 'taperLength', 'm');
  return Math.max((l - defectLength - 2 * taperLength) / 2, 0) as Length;
}

export const overlapLeftFormula = /* @__PURE__ */ formula<OverlapLeftInput, Length>({
  id: 'laminate/overlap-left',
  title: 'Overlap that a length of laminate leaves',
  compute: overlapLeft,
  equation: { expression: 'max((l - l_defect - 2 * l_taper) / 2, 0 * l)' },
  inputs: {
    totalLength: { symbol: 'l', kind: 'length', name: 'length of the laminate', sample: [0.3, 2] },
    defectLength: { symbol: 'l_defect', kind: 'length', name: 'length of the defect', sample: [0, 1] },
    taperLength: { symbol: 'l_taper', kind: 'length', name: 'taper length', sample: [0, 0.2] },
  },
  output: { symbol: 'l_over', kind: 'length', name: 'overlap' },
  sources: [],
  evidence: { form: { tag: 'practice' } },
  limits: [],
});

import { finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';

export interface AxialExtentInput {
  readonly overlap: Length;
  readonly defectLength: Length;
  readonly taperLength: Length;
}

/**
 * Length of the laminate along the pipe, from one tapered end to the other.
 *
 * $$l = 2 l_{over} + l_{defect} + 2 l_{taper}$$
 *
 * @param input.overlap       l_over, on sound pipe beyond each end of the defect [m], > 0
 * @param input.defectLength  l_defect, along the pipe at the end of life [m], >= 0
 * @param input.taperLength   l_taper, of one end [m], >= 0
 * @returns length of the laminate [m]
 * @throws CalculationError `invalid-input`
 * @see ISO 24817:2017, 7.5.8; ASME PCC-2, 401-3.4, as recalled
 */
export function axialExtent(input: AxialExtentInput): Length {
  const { overlap, defectLength, taperLength } = input;
  positive(overlap, 'overlap', 'm');
  nonNegative(defectLength, 'defectLength', 'm');
  nonNegative(taperLength, 'taperLength', 'm');
  const length = 2 * overlap + defectLength + 2 * taperLength;
  finite(length, 'length of the laminate', 'm');
  return length as Length;
}

export const axialExtentFormula = /* @__PURE__ */ formula<AxialExtentInput, Length>({
  id: 'laminate/axial-extent',
  title: 'Length of the laminate',
  search: ['repair length', 'wrap length', 'how long'],
  compute: axialExtent,
  equation: { expression: '2 * l_over + l_defect + 2 * l_taper' },
  inputs: {
    overlap: { symbol: 'l_over', kind: 'length', name: 'overlap', sample: [0.05, 0.4] },
    defectLength: { symbol: 'l_defect', kind: 'length', name: 'length of the defect', sample: [0, 1] },
    taperLength: { symbol: 'l_taper', kind: 'length', name: 'taper length', sample: [0, 0.2] },
  },
  output: { symbol: 'l_total', kind: 'length', name: 'length of the laminate' },
  sources: [
    { key: 'iso-24817', locator: '7.5.8, as recalled' },
    { key: 'asme-pcc-2', locator: '401-3.4, as recalled' },
  ],
  evidence: { form: { tag: 'recalled' } },
  limits: [],
});

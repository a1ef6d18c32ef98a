import { finite, formula, nonNegative } from '../../formula/index.js';
import type { CorrosionRate, Length, Time } from '../../quantity/index.js';

export interface DefectLengthAtEndOfLifeInput {
  readonly defectLength: Length;
  readonly rate: CorrosionRate;
  readonly life: Time;
}

/**
 * Length that a metal loss reaches by the end of life, growing at both ends.
 *
 * $$L_{eol} = L + 2 r\,\tau$$
 *
 * @param input.defectLength  L, today [m], >= 0
 * @param input.rate          r, growth at each end [m/s], >= 0
 * @param input.life          tau, design life of the repair [s], >= 0
 * @returns length at end of life [m]
 * @throws CalculationError `invalid-input`
 * @see common practice
 */
export function defectLengthAtEndOfLife(input: DefectLengthAtEndOfLifeInput): Length {
  const { defectLength: L, rate: r, life } = input;
  nonNegative(L, 'defectLength', 'm');
  nonNegative(r, 'rate', 'm/s');
  nonNegative(life, 'life', 's');
  const length = L + 2 * (r * life);
  finite(length, 'length at end of life', 'm');
  return length as Length;
}

export const defectLengthAtEndOfLifeFormula = /* @__PURE__ */ formula<DefectLengthAtEndOfLifeInput, Length>({
  id: 'pipe/defect-length-at-end-of-life',
  title: 'Length of the metal loss at the end of life',
  search: ['corrosion growth'],
  compute: defectLengthAtEndOfLife,
  equation: { expression: 'L + 2 * r * T' },
  inputs: {
    defectLength: { symbol: 'L', kind: 'length', name: 'length of the defect today', sample: [0, 1] },
    rate: { symbol: 'r', kind: 'corrosion rate', name: 'growth at each end', sample: [0, 2e-11] },
    life: { symbol: 'T', kind: 'time', name: 'design life of the repair', sample: [0, 1e9] },
  },
  output: { symbol: 'L_eol', kind: 'length', name: 'length at the end of life' },
  sources: [],
  evidence: { form: { tag: 'practice' } },
  limits: [],
});

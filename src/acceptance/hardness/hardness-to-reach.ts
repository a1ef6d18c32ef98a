import { formula, positive, within } from '../../formula/index.js';
import type { Ratio } from '../../quantity/index.js';

export interface HardnessToReach {
  readonly leastMean: number;
  readonly leastSingle: number;
}

export interface HardnessToReachInput {
  readonly qualifiedHardness: number;
  readonly meanShare: Ratio;
  readonly singleShare: Ratio;
}

/**
 * Hardness that the cured repair has to reach, as the mean of its readings and at each of them.
 *
 * $$h_m = r_m h_q, \quad h_1 = r_1 h_q$$
 *
 * @param input.qualifiedHardness h_q, found in the qualification of the system, 1 to 100
 * @param input.meanShare         r_m, share that the mean has to reach, above 0 and at most 1
 * @param input.singleShare       r_1, share that each reading has to reach, above 0 and at most 1
 * @returns least mean and least single reading, on the scale of the qualified value
 * @throws CalculationError `invalid-input`
 * @remarks On paper both are rounded up: a reading that reaches the number printed reaches the limit.
 */
export function hardnessToReach(input: HardnessToReachInput): HardnessToReach {
  const { qualifiedHardness: hQ, meanShare: rM, singleShare: r1 } = input;
  within(hQ, 1, 100, 'qualifiedHardness', '');
  positive(rM, 'meanShare', '');
  within(rM, 0, 1, 'meanShare', '');
  positive(r1, 'singleShare', '');
  within(r1, 0, 1, 'singleShare', '');
  return { leastMean: rM * hQ, leastSingle: r1 * hQ };
}

export const hardnessToReachFormula = /* @__PURE__ */ formula<HardnessToReachInput, HardnessToReach>({
  id: 'acceptance/hardness-to-reach',
  title: 'Hardness to reach',
  search: ['barcol', 'shore', 'cured'],
  compute: hardnessToReach,
  equation: { expression: 'r_m * h_q' },
  inputs: {
    qualifiedHardness: { symbol: 'h_q', kind: 'number', name: 'qualified hardness', sample: [20, 95] },
    meanShare: { symbol: 'r_m', kind: 'ratio', name: 'share that the mean has to reach', sample: [0.85, 1] },
    singleShare: { symbol: 'r_1', kind: 'ratio', name: 'share that each reading has to reach', sample: [0.7, 0.9] },
  },
  output: {
    leastMean: { symbol: 'h_m', kind: 'number', name: 'least mean' },
    leastSingle: { symbol: 'h_1', kind: 'number', name: 'least single reading' },
  },
  sources: [],
  evidence: { form: { tag: 'chosen', note: 'the shares of the gate, turned into readings that the crew can hold' } },
  limits: [],
});

import { formula, nonNegative, positive } from '../../formula/index.js';
import type { Time } from '../../quantity/index.js';

export interface InspectionIntervalInput {
  readonly remainingLife: Time;
  readonly classLimit: Time;
}

/**
 * Longest time to the next inspection: half of the remaining life, or the limit of the class if that is shorter.
 *
 * $$\tau_i = \min\left(\frac{\tau}{2},\ \tau_{class}\right)$$
 *
 * @param input.remainingLife  tau [s], >= 0
 * @param input.classLimit     tau_class, longest interval for the class of the pipe [s], > 0
 * @returns time to the next inspection [s]
 * @throws CalculationError `invalid-input`
 * @see API 570
 */
export function inspectionInterval(input: InspectionIntervalInput): Time {
  nonNegative(input.remainingLife, 'remainingLife', 's');
  positive(input.classLimit, 'classLimit', 's');
  return Math.min(input.remainingLife / 2, input.classLimit) as Time;
}

export const inspectionIntervalFormula = /* @__PURE__ */ formula<InspectionIntervalInput, Time>({
  id: 'pipe/inspection-interval',
  title: 'Longest time to the next inspection',
  search: ['reinspection', 'half life', 'ndt'],
  compute: inspectionInterval,
  equation: { expression: 'min(T / 2, T_class)' },
  inputs: {
    remainingLife: { symbol: 'T', kind: 'time', name: 'remaining life', sample: [0, 1e9] },
    classLimit: { symbol: 'T_class', kind: 'time', name: 'limit of the class', sample: [1e8, 4e8] },
  },
  output: { symbol: 'T_i', kind: 'time', name: 'time to the next inspection' },
  sources: [{ key: 'api-570', locator: 'inspection intervals' }],
  evidence: { form: { tag: 'secondary' } },
  limits: [],
});

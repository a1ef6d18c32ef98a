import { formula, positive } from '../../formula/index.js';
import type { Mass, Ratio } from '../../quantity/index.js';

export interface ScaleStepInput {
  readonly mass: Mass;
  readonly tolerance: Ratio;
}

/**
 * Coarsest step of a scale that still weighs a portion within the tolerance of the mixing ratio.
 *
 * $$\delta = \frac{\tau m}{2}$$
 *
 * @param input.mass      m, the smallest portion that is weighed [kg], > 0
 * @param input.tolerance tau, tolerance of the mixing ratio by mass [1], > 0
 * @returns step of the scale [kg]
 * @throws CalculationError `invalid-input`
 * @remarks The inverse of `leastWeighedMass`: a scale that weighs the smallest portion weighs every other.
 */
export function scaleStep(input: ScaleStepInput): Mass {
  const { mass: m, tolerance: tau } = input;
  positive(m, 'mass', 'kg');
  positive(tau, 'tolerance', '');
  const delta = (tau * m) / 2;
  positive(delta, 'scaleStep', 'kg');
  return delta as Mass;
}

export const scaleStepFormula = /* @__PURE__ */ formula<ScaleStepInput, Mass>({
  id: 'resin/scale-step',
  title: 'Step that the scale must show',
  compute: scaleStep,
  equation: { expression: 'tau * m / 2' },
  inputs: {
    mass: { symbol: 'm', kind: 'mass', name: 'smallest portion that is weighed', sample: [0.005, 5] },
    tolerance: { symbol: 'tau', kind: 'ratio', name: 'tolerance of the mixing ratio by mass', sample: [0.01, 0.1] },
  },
  output: { symbol: 'delta', kind: 'mass', name: 'step of the scale' },
  sources: [],
  evidence: { form: { tag: 'practice' } },
  limits: [],
});

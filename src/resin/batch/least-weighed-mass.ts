import { formula, positive } from '../../formula/index.js';
import type { Mass, Ratio } from '../../quantity/index.js';

export interface LeastWeighedMassInput {
  readonly resolution: Mass;
  readonly tolerance?: Ratio | undefined;
}

/**
 * Least mass of the smaller component that a scale weighs within the tolerance of the mixing ratio.
 *
 * $$m_{min} = \frac{2 \delta}{\tau}$$
 *
 * @param input.resolution delta, smallest step of the scale [kg], > 0
 * @param input.tolerance tau, tolerance of the mixing ratio by mass [1], > 0; 0.05 when not given
 * @returns least mass of the smaller component [kg]
 * @throws CalculationError `invalid-input`
 */
export function leastWeighedMass(input: LeastWeighedMassInput): Mass {
  const { resolution: delta, tolerance: tau = 0.05 as Ratio } = input;
  positive(delta, 'resolution', 'kg');
  positive(tau, 'tolerance', '');
  const m = (2 * delta) / tau;
  positive(m, 'leastWeighedMass', 'kg');
  return m as Mass;
}

export const leastWeighedMassFormula = /* @__PURE__ */ formula<LeastWeighedMassInput, Mass>({
  id: 'resin/least-weighed-mass',
  title: 'Least mass that a scale can weigh',
  compute: leastWeighedMass,
  equation: { expression: '2 * delta / tau' },
  inputs: {
    resolution: { symbol: 'delta', kind: 'mass', name: 'smallest step of the scale', sample: [0.0001, 0.01] },
    tolerance: {
      symbol: 'tau',
      kind: 'ratio',
      name: 'tolerance of the mixing ratio by mass',
      sample: [0.01, 0.1],
      default: 0.05,
    },
  },
  output: { symbol: 'm_min', kind: 'mass', name: 'least mass of the smaller component' },
  sources: [],
  evidence: { form: { tag: 'practice' }, tolerance: { tag: 'practice' } },
  limits: [],
});

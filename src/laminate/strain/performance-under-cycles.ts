import { formula, refuse } from '../../formula/index.js';

export interface PerformanceUnderCyclesInput {
  readonly performanceFactor: number;
  readonly cyclicFactor: number;
}

/**
 * Factor on the long-term strength, lowered for repeated loading.
 *
 * $$f = f_{perf}\, f_c$$
 *
 * @param input.performanceFactor  f_perf, by class, life and kind of test, above 0 and at most 1
 * @param input.cyclicFactor       f_c, above 0 and at most 1
 * @returns factor, above 0 and at most 1
 * @throws CalculationError `invalid-input`
 * @remarks The tests behind a long-term strength are static. The rule sets put f_c on the strains; that it lowers the
 *   strength alike is this library's own.
 */
export function performanceUnderCycles(input: PerformanceUnderCyclesInput): number {
  const { performanceFactor, cyclicFactor } = input;
  share(performanceFactor, 'performanceFactor');
  share(cyclicFactor, 'cyclicFactor');
  const factor = performanceFactor * cyclicFactor;
  share(factor, 'factor');
  return factor;
}

function share(value: number, parameter: string): void {
  if (value > 0 && value <= 1) return;
  refuse({ code: 'invalid-input', parameter, value, unit: '', constraint: 'must be above 0 and at most 1' });
}

export const performanceUnderCyclesFormula = /* @__PURE__ */ formula<PerformanceUnderCyclesInput, number>({
  id: 'laminate/performance-under-cycles',
  title: 'Factor on the long-term strength under cycles',
  compute: performanceUnderCycles,
  equation: { expression: 'f_perf * f_c' },
  inputs: {
    performanceFactor: { symbol: 'f_perf', kind: 'number', name: 'performance factor', sample: [0.3, 0.9] },
    cyclicFactor: { symbol: 'f_c', kind: 'number', name: 'cyclic factor', sample: [0.25, 1] },
  },
  output: { symbol: 'f', kind: 'number', name: 'factor on the long-term strength' },
  sources: [],
  evidence: { form: { tag: 'chosen' } },
  limits: [],
});

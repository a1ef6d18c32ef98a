import { formula, nonNegative, positive } from '../../formula/index.js';
import type { Ratio, Temperature, ThermalExpansion } from '../../quantity/index.js';

export interface PipeWarmingFactorInput {
  readonly temperature: Temperature;
  readonly expansion?: ThermalExpansion | undefined;
  readonly referenceTemperature?: Temperature | undefined;
}

/**
 * Volume of a warm pipe over its volume at the reference temperature.
 *
 * $$F_{pt} = 1 + \alpha_v (T - T_0)$$
 *
 * @param input.temperature          T, temperature of the wall [K], > 0
 * @param input.expansion            alpha_v, expansion of the volume [1/K], >= 0; 18.2e-6 per degF when not given
 * @param input.referenceTemperature T_0 [K], > 0; 60 degF when not given
 * @returns factor [1], > 0
 * @throws CalculationError `invalid-input`
 * @see Pipeline Rules of Thumb Handbook, pp. 140 to 142
 */
export function pipeWarmingFactor(input: PipeWarmingFactorInput): Ratio {
  const {
    temperature: T,
    expansion: alphaV = 0.00003276 as ThermalExpansion,
    referenceTemperature: T0 = 288.7055555555556 as Temperature,
  } = input;
  positive(T, 'temperature', 'K');
  nonNegative(alphaV, 'expansion', '1/K');
  positive(T0, 'referenceTemperature', 'K');
  const F = 1 + alphaV * (T - T0);
  positive(F, 'warming of the pipe', '');
  return F as Ratio;
}

export const pipeWarmingFactorFormula = /* @__PURE__ */ formula<PipeWarmingFactorInput, Ratio>({
  id: 'acceptance/pipe-warming-factor',
  title: 'Warming of the pipe under test',
  compute: pipeWarmingFactor,
  equation: { expression: '1 + alpha_v * (T - T_0)' },
  inputs: {
    temperature: { symbol: 'T', kind: 'temperature', name: 'temperature of the wall', sample: [274, 311] },
    expansion: {
      symbol: 'alpha_v',
      kind: 'thermal expansion',
      name: 'expansion of the volume',
      sample: [2e-5, 5e-5],
      default: 0.00003276,
    },
    referenceTemperature: {
      symbol: 'T_0',
      kind: 'temperature',
      name: 'reference temperature',
      sample: [285, 295],
      default: 288.7055555555556,
    },
  },
  output: { symbol: 'F_pt', kind: 'ratio', name: 'warming factor of the pipe' },
  sources: [{ key: 'rules-of-thumb', locator: 'pp. 140 to 142' }],
  evidence: {
    form: { tag: 'published' },
    expansion: { tag: 'published' },
    referenceTemperature: { tag: 'published' },
  },
  limits: [],
});

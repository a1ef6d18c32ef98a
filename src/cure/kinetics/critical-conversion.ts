import { finite, formula, positive } from '../../formula/index.js';
import type { Ratio, Temperature, TemperatureCoefficient } from '../../quantity/index.js';

export interface CriticalConversionInput {
  readonly atZero: Ratio;
  readonly perKelvin: TemperatureCoefficient;
  readonly temperature: Temperature;
}

/**
 * Conversion at which diffusion takes over the cure, at a cure temperature.
 *
 * $$a_C = a_{C0} + a_{CT} T$$
 *
 * @param input.atZero      a_C0, of the fit, carried down to 0 K; may be negative
 * @param input.perKelvin   a_CT [1/K]
 * @param input.temperature T [K], > 0
 * @returns critical conversion; above 1 means that diffusion hardly matters
 * @throws CalculationError `invalid-input`
 * @see Hubert and others 2001, as recalled
 */
export function criticalConversion(input: CriticalConversionInput): Ratio {
  const { atZero, perKelvin, temperature: T } = input;
  finite(atZero, 'atZero', '');
  finite(perKelvin, 'perKelvin', '1/K');
  positive(T, 'temperature', 'K');
  const aC = atZero + perKelvin * T;
  finite(aC, 'perKelvin', '1/K');
  return aC as Ratio;
}

export const criticalConversionFormula = /* @__PURE__ */ formula<CriticalConversionInput, Ratio>({
  id: 'cure/critical-conversion',
  title: 'Conversion at which diffusion takes over',
  compute: criticalConversion,
  equation: { expression: 'a_C0 + a_CT * T' },
  inputs: {
    atZero: { symbol: 'a_C0', kind: 'ratio', name: 'carried down to 0 K', sample: [-2, 0] },
    perKelvin: { symbol: 'a_CT', kind: 'temperature coefficient', name: 'change per kelvin', sample: [0.004, 0.007] },
    temperature: { symbol: 'T', kind: 'temperature', name: 'cure temperature', sample: [283.15, 473.15] },
  },
  output: { symbol: 'a_C', kind: 'ratio', name: 'critical conversion' },
  sources: [{ key: 'hubert-2001', locator: 'diffusion factor' }],
  evidence: { form: { tag: 'recalled' } },
  limits: [],
});

import { finite, formula, nonNegative, positive, within } from '../../formula/index.js';
import type { RateConstant, Ratio, Time } from '../../quantity/index.js';
import { startFromNothing } from './conversions.js';
import { conversionAfter } from './rate-integral.js';

export interface AutocatalyticConversionInput {
  readonly rateConstant: RateConstant;
  readonly m: number;
  readonly n: number;
  readonly startConversion: Ratio;
  readonly time: Time;
  readonly diffusionConstant?: number | undefined;
  readonly criticalConversion?: Ratio | undefined;
}

/**
 * Degree of cure after a time by the autocatalytic law at one temperature, slowed by diffusion near the glass.
 *
 * $$\frac{da}{dt} = \frac{k a^m (1-a)^n}{1 + \exp[C (a - a_C)]}$$
 *
 * @param input.rateConstant       k at the temperature [1/s], > 0
 * @param input.m                  order of the autocatalysis, from 0 to 5
 * @param input.n                  order of the rest, from 0 to 10
 * @param input.startConversion    a_0, below 1; above 0 when m is
 * @param input.time               t [s], >= 0
 * @param input.diffusionConstant  C, from 0 to 200; 0 when absent: no diffusion factor
 * @param input.criticalConversion a_C at the temperature (`criticalConversion`), from -1 to 2; 1 when absent
 * @returns degree of cure
 * @throws CalculationError `invalid-input`; `no-solution` for a start from 0 when m > 0
 * @remarks With C = 0 the bare law, not half of it. A fit to a DSC run is no field cure time: at site temperature the resin turns to glass first (`requiredCureTemperature`).
 * @see Hubert and others 2001, as recalled; Barral and others 1995 (abstract)
 */
export function autocatalyticConversion(input: AutocatalyticConversionInput): Ratio {
  const { rateConstant: k, m, n, startConversion: a0, time: t } = input;
  const { diffusionConstant: C = 0, criticalConversion: aC = 1 } = input;
  positive(k, 'rateConstant', '1/s');
  within(m, 0, 5, 'm', '');
  within(n, 0, 10, 'n', '');
  within(a0, 0, 1 - 1e-12, 'startConversion', '');
  if (a0 === 0 && m > 0) startFromNothing(a0);
  nonNegative(t, 'time', 's');
  finite(k * t, 'time', 's');
  within(C, 0, 200, 'diffusionConstant', '');
  within(aC, -1, 2, 'criticalConversion', '');
  const slowed = C === 0 ? () => 1 : (a: number): number => 1 + Math.exp(C * (a - aC));
  return conversionAfter((a, left) => (k * (a ** m * left ** n)) / slowed(a), a0, t) as Ratio;
}

export const autocatalyticConversionFormula = /* @__PURE__ */ formula<AutocatalyticConversionInput, Ratio>({
  id: 'cure/autocatalytic-conversion',
  title: 'Degree of cure after a time, autocatalytic with diffusion',
  compute: autocatalyticConversion,
  equation: {
    algorithm:
      'The conversion at which the integral of (1 + exp(C (a - a_C)))/(k a^m (1 - a)^n) from the start equals the time; without C the first factor is 1.',
  },
  inputs: {
    rateConstant: { symbol: 'k', kind: 'rate constant', name: 'rate constant', sample: [1e-6, 1e-2] },
    m: { symbol: 'm', kind: 'number', name: 'order of the autocatalysis', sample: [0.2, 1.2] },
    n: { symbol: 'n', kind: 'number', name: 'order of the rest', sample: [0.8, 2.8] },
    startConversion: { symbol: 'a_0', kind: 'ratio', name: 'degree of cure at the start', sample: [0.001, 0.1] },
    time: { symbol: 't', kind: 'time', name: 'time', sample: [60, 20000] },
    diffusionConstant: { symbol: 'C', kind: 'number', name: 'diffusion constant', sample: [20, 50], default: 0 },
    criticalConversion: {
      symbol: 'a_C',
      kind: 'ratio',
      name: 'conversion at which diffusion takes over',
      sample: [0.5, 0.95],
      default: 1,
    },
  },
  output: { symbol: 'a', kind: 'ratio', name: 'degree of cure' },
  sources: [
    { key: 'hubert-2001', locator: 'diffusion factor' },
    { key: 'barral-1995', locator: 'abstract: diffusion control after vitrification' },
  ],
  evidence: { form: { tag: 'recalled' } },
  limits: [],
});

import { finite, formula, nonNegative, positive, refuse } from '../../formula/index.js';
import type { Temperature, TemperatureDifference } from '../../quantity/index.js';

export interface TemperatureFactorInput {
  readonly upperTemperatureLimit: Temperature;
  readonly designTemperature: Temperature;
  readonly quadratic?: number;
  readonly linear?: number;
  readonly constant?: number;
  readonly coefficientUnit?: TemperatureDifference;
}

/**
 * Factor on the default strain for a design temperature near the upper temperature limit of the laminate.
 *
 * $$f_{T1} = \min(1,\; a x^2 + b x + c), \qquad x = \frac{T_m - T_d}{\Delta T_1}$$
 *
 * @param input.upperTemperatureLimit  T_m [K]
 * @param input.designTemperature      T_d [K], <= T_m
 * @param input.quadratic              a, 6e-5 unless given, >= 0
 * @param input.linear                 b, 0.001 unless given, >= 0
 * @param input.constant               c, 0.7014 unless given, > 0
 * @param input.coefficientUnit        dT_1, the degree that a and b are for: 1 K unless given
 * @returns temperature factor, above 0 and at most 1
 * @throws CalculationError `invalid-input`; `outside-validity` for a design temperature above the limit
 * @remarks 0.7014 at the limit; the cap is reached 62.7 K below it. The unit of the coefficients is an input, so the form
 *   scales with the temperature unit as every other formula does.
 * @see ISO 24817:2017, 7.5.5; ASME PCC-2, Eq. 10, as recalled
 */
export function temperatureFactor(input: TemperatureFactorInput): number {
  const { upperTemperatureLimit: Tm, designTemperature: Td, quadratic: a = 6e-5, linear: b = 0.001 } = input;
  const { constant: c = 0.7014, coefficientUnit: dT1 = 1 } = input;
  positive(Tm, 'upperTemperatureLimit', 'K');
  positive(Td, 'designTemperature', 'K');
  nonNegative(a, 'quadratic', '');
  nonNegative(b, 'linear', '');
  positive(c, 'constant', '');
  positive(dT1, 'coefficientUnit', 'K');
  if (Td > Tm) {
    refuse({
      code: 'outside-validity',
      parameter: 'designTemperature',
      value: Td,
      unit: 'K',
      constraint: 'must be at most the upper temperature limit of the laminate, {limit}',
      limit: Tm,
      source: 'after ISO 24817:2017, 7.5.3, as recalled',
    });
  }
  const x = (Tm - Td) / dT1;
  const raw = a * x * x + b * x + c;
  finite(raw, 'temperature factor', '');
  return Math.min(raw, 1);
}

export const temperatureFactorFormula = /* @__PURE__ */ formula<TemperatureFactorInput, number>({
  id: 'laminate/temperature-factor',
  title: 'Temperature factor on the strain',
  search: ['derating', 'hot line', 'glass transition'],
  compute: temperatureFactor,
  equation: {
    where: [
      { symbol: 'x', kind: 'number', expression: '(T_m - T_d) / dT_1' },
      { symbol: 'f_x', kind: 'number', expression: 'a * x^2 + b * x + c' },
    ],
    branches: [{ when: 'f_x >= 1', expression: '1' }, { expression: 'f_x' }],
  },
  inputs: {
    upperTemperatureLimit: {
      symbol: 'T_m',
      kind: 'temperature',
      name: 'upper temperature limit',
      sample: [320, 400],
    },
    designTemperature: { symbol: 'T_d', kind: 'temperature', name: 'design temperature', sample: [260, 390] },
    quadratic: { symbol: 'a', kind: 'number', name: 'quadratic coefficient', default: 6e-5, sample: [2e-5, 7e-5] },
    linear: { symbol: 'b', kind: 'number', name: 'linear coefficient', default: 0.001, sample: [5e-4, 1.5e-3] },
    constant: { symbol: 'c', kind: 'number', name: 'factor at the limit', default: 0.7014, sample: [0.65, 0.75] },
    coefficientUnit: {
      symbol: 'dT_1',
      kind: 'temperature difference',
      name: 'degree of the coefficients',
      default: 1,
      sample: [0.5, 2],
    },
  },
  output: { symbol: 'f_T1', kind: 'number', name: 'temperature factor' },
  sources: [
    { key: 'iso-24817', locator: '7.5.5, as recalled' },
    { key: 'asme-pcc-2', locator: '401-3.4, Eq. 10, as recalled' },
  ],
  evidence: {
    form: { tag: 'recalled' },
    quadratic: { tag: 'recalled' },
    linear: { tag: 'recalled' },
    constant: { tag: 'recalled' },
  },
  limits: [
    {
      sort: 'stop',
      text: 'the design temperature must not exceed the upper temperature limit',
      source: { key: 'iso-24817', locator: '7.5.3, as recalled' },
    },
  ],
});

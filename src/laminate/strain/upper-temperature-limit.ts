import { finite, formula, nonNegative, positive, refuse } from '../../formula/index.js';
import type { Temperature, TemperatureDifference } from '../../quantity/index.js';

export interface UpperTemperatureLimitInput {
  readonly transitionTemperature: Temperature;
  readonly margin: TemperatureDifference;
}

/**
 * Highest design temperature of a cured laminate, below its glass transition or heat deflection temperature.
 *
 * $$T_m = T_g - \Delta T_m$$
 *
 * @param input.transitionTemperature  T_g, glass transition or heat deflection temperature as cured on site [K]
 * @param input.margin                 dT_m, margin of the rule set for this kind of temperature and of defect [K], >= 0
 * @returns upper temperature limit [K]
 * @throws CalculationError `invalid-input`; `no-solution` when the margin reaches below absolute zero
 * @remarks The transition must be that of the cure which the site allows; a warmer laboratory cure raises it.
 * @see ISO 24817:2017, 7.5.3; ASME PCC-2, Table 401-3.4.2, as recalled
 */
export function upperTemperatureLimit(input: UpperTemperatureLimitInput): Temperature {
  const { transitionTemperature: Tg, margin: dT } = input;
  positive(Tg, 'transitionTemperature', 'K');
  nonNegative(dT, 'margin', 'K');
  const Tm = Tg - dT;
  if (!(Tm > 0)) {
    refuse({
      code: 'no-solution',
      parameter: 'transitionTemperature',
      value: Tg,
      unit: 'K',
      constraint: 'must be above the margin of {limit}, so that a limit above absolute zero is left',
      limit: dT,
    });
  }
  finite(Tm, 'upper temperature limit', 'K');
  return Tm as Temperature;
}

export const upperTemperatureLimitFormula = /* @__PURE__ */ formula<UpperTemperatureLimitInput, Temperature>({
  id: 'laminate/upper-temperature-limit',
  title: 'Upper temperature limit of the laminate',
  search: ['glass transition', 'tg', 'hdt', 'maximum temperature'],
  compute: upperTemperatureLimit,
  equation: { expression: 'T_g - dT_m' },
  inputs: {
    transitionTemperature: {
      symbol: 'T_g',
      kind: 'temperature',
      name: 'glass transition or heat deflection temperature',
      sample: [310, 450],
    },
    margin: { symbol: 'dT_m', kind: 'temperature difference', name: 'margin', sample: [10, 30] },
  },
  output: { symbol: 'T_m', kind: 'temperature', name: 'upper temperature limit' },
  sources: [
    { key: 'iso-24817', locator: '7.5.3, as recalled' },
    { key: 'asme-pcc-2', locator: 'Table 401-3.4.2, as recalled' },
  ],
  evidence: { form: { tag: 'recalled' } },
  limits: [],
});

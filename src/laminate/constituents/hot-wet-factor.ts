import { below, finite, formula, positive } from '../../formula/index.js';
import type { Temperature } from '../../quantity/index.js';

export interface HotWetFactorInput {
  readonly wetTransition: Temperature;
  readonly dryTransition: Temperature;
  readonly temperature: Temperature;
  readonly referenceTemperature: Temperature;
}

/**
 * Share of a property of the matrix that is left when it is hot and wet; thermal properties take its reciprocal.
 *
 * $$\frac{P}{P_0} = \sqrt{\frac{T_{g,wet} - T}{T_{g,dry} - T_0}}$$
 *
 * @param input.wetTransition         T_gw [K], > 0
 * @param input.dryTransition         T_gd [K], > 0
 * @param input.temperature           T [K], > 0
 * @param input.referenceTemperature  T_0 [K], > 0
 * @returns share of the property
 * @throws CalculationError `invalid-input`
 * @remarks An empirical form for epoxies. The wet glass transition is an input: the quadratic in moisture that is printed beside it
 *   does not give its own number. Below T_0 it gives more than 1.
 * @see Chamis, NASA TM-83320, 1983
 */
export function hotWetFactor(input: HotWetFactorInput): number {
  const { wetTransition: Tgw, dryTransition: Tgd, temperature: T, referenceTemperature: T0 } = input;
  positive(Tgw, 'wetTransition', 'K');
  positive(Tgd, 'dryTransition', 'K');
  positive(T, 'temperature', 'K');
  positive(T0, 'referenceTemperature', 'K');
  below(T, Tgw, 'the glass transition when wet', 'temperature', 'K');
  below(T0, Tgd, 'the glass transition when dry', 'referenceTemperature', 'K');
  const result = Math.sqrt((Tgw - T) / (Tgd - T0));
  finite(result, 'share left', '');
  return result;
}

export const hotWetFactorFormula = /* @__PURE__ */ formula<HotWetFactorInput, number>({
  id: 'laminate/hot-wet-factor',
  title: 'Matrix property left when hot and wet',
  search: ['moisture', 'knockdown', 'glass transition'],
  compute: hotWetFactor,
  equation: { expression: 'sqrt((T_gw - T) / (T_gd - T_0))' },
  inputs: {
    wetTransition: { symbol: 'T_gw', kind: 'temperature', name: 'glass transition when wet', sample: [370, 450] },
    dryTransition: { symbol: 'T_gd', kind: 'temperature', name: 'glass transition when dry', sample: [400, 480] },
    temperature: { symbol: 'T', kind: 'temperature', name: 'temperature at which it serves', sample: [280, 360] },
    referenceTemperature: {
      symbol: 'T_0',
      kind: 'temperature',
      name: 'temperature at which it was measured',
      sample: [285, 305],
    },
  },
  output: { symbol: 'F', kind: 'number', name: 'share left' },
  sources: [{ key: 'nasa-tm-83320', locator: 'examples 8.1 and 8.2' }],
  evidence: { form: { tag: 'secondary', derived: 'all of it at the measurement, nothing at the glass transition' } },
  limits: [],
});

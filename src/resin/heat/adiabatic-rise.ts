import { atMost, formula, positive } from '../../formula/index.js';
import type { Ratio, SpecificEnergy, SpecificHeat, TemperatureDifference } from '../../quantity/index.js';

export interface AdiabaticRiseInput {
  readonly heatOfReaction: SpecificEnergy;
  readonly specificHeat: SpecificHeat;
  readonly resinMassFraction?: Ratio | undefined;
  readonly overheatingRise?: TemperatureDifference | undefined;
}

/**
 * Temperature rise of a mix that loses no heat and cures in full: the upper bound of its exotherm.
 *
 * $$\Delta T = \frac{w_r H}{c_p}$$
 *
 * @param input.heatOfReaction H, heat of reaction per mass of resin [J/kg], > 0
 * @param input.specificHeat c_p, specific heat of the mix [J/(kg K)], > 0
 * @param input.resinMassFraction w_r, mass of resin in the mass of the mix [1], above 0, at most 1; 1 when not given
 * @param input.overheatingRise Delta_T_w, rise above which the pot is warned of [K], > 0; 100 when not given
 * @returns temperature rise [K]
 * @throws CalculationError `invalid-input`
 * @remarks A warning, not a cure temperature. Filler lowers it in proportion.
 * @see Lee, Loos and Springer 1982 for a heat of reaction; own form
 */
export function adiabaticRise(input: AdiabaticRiseInput): TemperatureDifference {
  const {
    heatOfReaction: H,
    specificHeat: cP,
    resinMassFraction: wR = 1 as Ratio,
    overheatingRise: DeltaTW = 100 as TemperatureDifference,
  } = input;
  positive(H, 'heatOfReaction', 'J/kg');
  positive(cP, 'specificHeat', 'J/(kg K)');
  positive(wR, 'resinMassFraction', '');
  atMost(wR, 1, 'the whole', 'resinMassFraction', '');
  positive(DeltaTW, 'overheatingRise', 'K');
  const dT = (wR * H) / cP;
  positive(dT, 'adiabaticRise', 'K');
  return dT as TemperatureDifference;
}

/** Whether a pot that keeps its heat could rise beyond the stated limit, 100 K when none is given: it can smoke, foam and char. */
export function adiabaticRiseCanOverheat(input: AdiabaticRiseInput): boolean {
  return adiabaticRise(input) > (input.overheatingRise ?? 100);
}

export const adiabaticRiseFormula = /* @__PURE__ */ formula<AdiabaticRiseInput, TemperatureDifference>({
  id: 'resin/adiabatic-rise',
  title: 'Adiabatic temperature rise',
  search: ['exotherm', 'runaway', 'hot pot'],
  compute: adiabaticRise,
  equation: { expression: 'w_r * H / c_p' },
  inputs: {
    heatOfReaction: {
      symbol: 'H',
      kind: 'specific energy',
      name: 'heat of reaction per mass of resin',
      sample: [50000.0, 600000.0],
    },
    specificHeat: { symbol: 'c_p', kind: 'specific heat', name: 'specific heat of the mix', sample: [800, 2500] },
    resinMassFraction: {
      symbol: 'w_r',
      kind: 'ratio',
      name: 'mass of resin in the mass of the mix',
      sample: [0.1, 1],
      default: 1,
    },
    overheatingRise: {
      symbol: 'Delta_T_w',
      kind: 'temperature difference',
      name: 'rise above which the pot is warned of',
      sample: [50, 150],
      default: 100,
    },
  },
  output: { symbol: 'Delta_T', kind: 'temperature difference', name: 'adiabatic temperature rise' },
  sources: [{ key: 'lee-loos-springer-1982', locator: 'heat of reaction' }],
  evidence: { form: { tag: 'chosen', derived: 'energy balance' }, overheatingRise: { tag: 'chosen' } },
  limits: [
    {
      sort: 'note',
      text: 'a large pot that keeps its heat could rise by more than the stated limit (100 K): split it and spread it thin',
      beyond: adiabaticRiseCanOverheat,
    },
  ],
});

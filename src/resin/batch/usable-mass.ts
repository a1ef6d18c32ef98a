import { formula, nonNegative, positive, refuse } from '../../formula/index.js';
import type { Mass, MassFlow, Time } from '../../quantity/index.js';

export interface UsableMassInput {
  readonly placingRate: MassFlow;
  readonly workingTime: Time;
  readonly mixingTime?: Time | undefined;
}

/**
 * Mass of mix that the crew can place before its working time is over.
 *
 * $$m_u = \dot m (t_w - t_m)$$
 *
 * @param input.placingRate q, mass placed per time [kg/s], > 0
 * @param input.workingTime t_w, working time of the batch at its mass and temperature, from the start of mixing [s],
 *   > 0
 * @param input.mixingTime t_m, time from the start of mixing to the start of placing [s], >= 0 and < t_w; 300 when
 *   not given
 * @returns usable mass in a batch [kg]
 * @throws CalculationError `invalid-input`; `no-solution` when mixing takes all of the working time
 * @remarks Working time falls with the mass in the pot and with heat: take the value for this batch today, not that
 *   of 100 g at 20 degC. Spread out, a mix lasts longer than in the pot.
 */
export function usableMass(input: UsableMassInput): Mass {
  const { placingRate: q, workingTime: tW, mixingTime: tM = 300 as Time } = input;
  positive(q, 'placingRate', 'kg/s');
  positive(tW, 'workingTime', 's');
  nonNegative(tM, 'mixingTime', 's');
  if (!(tM < tW)) noTimeLeft(tM, tW);
  const m = q * (tW - tM);
  positive(m, 'usableMass', 'kg');
  return m as Mass;
}

function noTimeLeft(value: number, workingTime: number): never {
  refuse({
    code: 'no-solution',
    parameter: 'mixingTime',
    value,
    unit: 's',
    constraint: 'must be below the working time, {limit}, or nothing can be placed',
    limit: workingTime,
  });
}

export const usableMassFormula = /* @__PURE__ */ formula<UsableMassInput, Mass>({
  id: 'resin/usable-mass',
  title: 'Mass usable in the working time',
  search: ['pot life', 'batch size'],
  compute: usableMass,
  equation: { expression: 'q * (t_w - t_m)' },
  inputs: {
    placingRate: { symbol: 'q', kind: 'mass flow', name: 'mass placed per time', sample: [0.0001, 0.02] },
    workingTime: {
      symbol: 't_w',
      kind: 'time',
      name: 'working time of the batch at its mass and temperature, from the start of mixing',
      sample: [600, 5400],
    },
    mixingTime: {
      symbol: 't_m',
      kind: 'time',
      name: 'time from the start of mixing to the start of placing',
      sample: [60, 600],
      default: 300,
    },
  },
  output: { symbol: 'm_u', kind: 'mass', name: 'usable mass in a batch' },
  sources: [],
  evidence: {
    form: { tag: 'chosen', derived: 'stock placed second by second' },
    mixingTime: { tag: 'chosen', note: 'five minutes' },
  },
  limits: [],
});

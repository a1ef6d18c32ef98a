import { atMost, finite, formula, positive, refuse } from '../../formula/index.js';
import { arrheniusShift } from '../../mechanics/index.js';
import type { ActivationEnergy, MolarHeatCapacity, Temperature, Time } from '../../quantity/index.js';
import {
  activationEnergy,
  gasConstant,
  highEnergy,
  lowEnergy,
  mechanism,
  minimumTemperature,
  referenceTemperature,
  temperature,
  testedFrom,
  testedTo,
  typicalEnergy,
} from '../declared-inputs.js';
import { notBelowMinimum } from '../shift/minimum-temperature.js';
import { checkTestedSpan, leavesTestedSpan, type TestedSpan } from '../shift/tested-span.js';
import { type CureMechanism, onlyTwoPart } from './cure-mechanism.js';
import { activationEnergyMissing, type EnergyChoice, energiesOf, extremes } from './energy-bounds.js';

export interface OvercoatWindowInput extends TestedSpan, EnergyChoice {
  readonly opens: Time;
  readonly closes: Time;
  readonly temperature: Temperature;
  readonly minimumTemperature: Temperature;
  readonly mechanism: CureMechanism;
  readonly gasConstant?: MolarHeatCapacity | undefined;
}

export interface OvercoatWindow {
  readonly opensAfter: Time;
  readonly closesAfter: Time;
  readonly length: Time;
}

/**
 * When the next layer may go on: not before the window has opened, nor after it may have closed.
 *
 * $$t_{open} = \max_E \frac{t_{o}}{a_T(E)}, \qquad t_{close} = \min_E \frac{t_{c}}{a_T(E)}$$
 *
 * @param input.opens                t_o, the maker's shortest time to overcoat at the reference temperature [s], > 0
 * @param input.closes               t_c, the maker's longest time to overcoat [s], above t_o
 * @param input.referenceTemperature T_ref [K], > 0
 * @param input.temperature          T [K], at least the minimum
 * @param input.minimumTemperature   T_min [K]
 * @param input.activationEnergy     E from the maker; else the three bounds are searched [J/mol]
 * @param input.mechanism            only a two-part reaction is shifted
 * @returns clock times from the end of mixing at which the window opens and closes, and its length [s]
 * @throws CalculationError `invalid-input`; `outside-validity` for a moisture-cured system or below T_min;
 *   `no-solution` when the bounds leave no hour that is surely inside
 * @remarks After it closes the surface is abraded before the next layer.
 * @see ASTM C1074 (equivalent age)
 */
export function overcoatWindow(input: OvercoatWindowInput): OvercoatWindow {
  const { opens, closes, temperature, minimumTemperature, mechanism, referenceTemperature, gasConstant } = input;
  onlyTwoPart(mechanism);
  positive(opens, 'opens', 's');
  positive(closes, 'closes', 's');
  atMost(opens, closes, 'the time at which the window closes', 'opens', 's');
  checkTestedSpan(input);
  notBelowMinimum(temperature, minimumTemperature);
  const energies = energiesOf(input);
  const shifted = (time: number) => (energy: number) => {
    const activationEnergy = energy as ActivationEnergy;
    return time / arrheniusShift({ activationEnergy, referenceTemperature, temperature, gasConstant });
  };
  const open = extremes(energies, shifted(opens)).longest;
  const close = extremes(energies, shifted(closes)).shortest;
  finite(open, 'opens', 's');
  finite(close, 'closes', 's');
  if (!(open < close)) noSureWindow(temperature);
  return { opensAfter: open as Time, closesAfter: close as Time, length: (close - open) as Time };
}

function noSureWindow(temperature: number): never {
  refuse({
    code: 'no-solution',
    parameter: 'temperature',
    value: temperature,
    unit: 'K',
    constraint:
      "no hour is surely inside the overcoat window at this temperature; give the maker's activation energy, or abrade before the next layer",
  });
}

/** Whether the temperature leaves the span in which the maker's times were measured. */
export function overcoatWindowLeavesTestedSpan(input: OvercoatWindowInput): boolean {
  return leavesTestedSpan(input, input.temperature);
}

export const overcoatWindowFormula = /* @__PURE__ */ formula<OvercoatWindowInput, OvercoatWindow>({
  id: 'cure/overcoat-window',
  title: 'Overcoat window at site temperature',
  search: ['recoat', 'overcoating time', 'intercoat'],
  compute: overcoatWindow,
  equation: {
    algorithm:
      'Opens at the longest of t_o / a_T and closes at the shortest of t_c / a_T over the activation energies; nothing is left when they cross.',
  },
  inputs: {
    opens: { symbol: 't_o', kind: 'time', name: 'shortest time to overcoat at the reference', sample: [900, 14400] },
    closes: { symbol: 't_c', kind: 'time', name: 'longest time to overcoat at the reference', sample: [28800, 259200] },
    referenceTemperature,
    temperature,
    minimumTemperature,
    activationEnergy,
    lowEnergy,
    typicalEnergy,
    highEnergy,
    mechanism,
    testedFrom,
    testedTo,
    gasConstant,
  },
  output: {
    opensAfter: { symbol: 't_open', kind: 'time', name: 'window opens after' },
    closesAfter: { symbol: 't_close', kind: 'time', name: 'window closes after' },
    length: { symbol: 't_window', kind: 'time', name: 'length of the window' },
  },
  sources: [{ key: 'astm-c1074', locator: 'equivalent age' }],
  evidence: {
    form: { tag: 'secondary' },
    E_low: { tag: 'chosen' },
    E_typ: { tag: 'chosen' },
    E_high: { tag: 'chosen' },
  },
  limits: [
    { sort: 'stop', text: 'A moisture-cured system is never shifted by temperature.' },
    { sort: 'stop', text: 'Not below the minimum cure temperature, where the cure stalls.' },
    {
      sort: 'note',
      text: 'The temperature leaves the span in which the times were measured: the activation energy is extrapolated.',
      beyond: overcoatWindowLeavesTestedSpan,
    },
    {
      sort: 'note',
      text: "The maker's activation energy is missing: the latest opening and the earliest closing of 40, 50 and 60 kJ/mol is taken.",
      beyond: activationEnergyMissing,
    },
  ],
});

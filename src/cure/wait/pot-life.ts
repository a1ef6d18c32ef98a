import { formula, positive } from '../../formula/index.js';
import type { Mass } from '../../quantity/index.js';
import {
  activationEnergy,
  gasConstant,
  highEnergy,
  lowEnergy,
  mechanism,
  referenceTemperature,
  temperature,
  testedFrom,
  testedTo,
  typicalEnergy,
} from '../declared-inputs.js';
import { activationEnergyMissing } from './energy-bounds.js';
import { type WorkingTime, type WorkingTimeInput, workingTime, workingTimeLeavesTestedSpan } from './working-time.js';

export interface PotLifeInput extends WorkingTimeInput {
  readonly testedMass: Mass;
  readonly batchMass: Mass;
}

/**
 * Pot life of a mixed batch at the temperature of its parts.
 *
 * $$t = \min_E \frac{t_{ref}}{a_T(E)}$$
 *
 * @param input.time                 t_ref, stated pot life at the reference temperature [s], > 0
 * @param input.referenceTemperature T_ref, at which the test started [K], > 0
 * @param input.testedMass           mass that was tested, often 100 g [kg], > 0
 * @param input.batchMass            mass of the batch [kg], > 0
 * @param input.temperature          T, of the parts when they are mixed [K]
 * @param input.activationEnergy     E from the maker; else the shortest of the three bounds is taken [J/mol]
 * @param input.mechanism            only a two-part reaction is shifted
 * @returns the pot life, the energy that it goes by, and the longest that the bounds allow
 * @throws CalculationError `invalid-input`; `outside-validity` for a moisture-cured system
 * @remarks A pot heats itself, and a deep one cannot lose the heat: above the tested mass the true pot life is shorter
 *   than this figure, by an amount that no law here gives (the adiabatic induction time is its floor). Split the batch.
 *   Stated pot lives end at different events: twice the viscosity, 100 g at 50 degC, no longer spreadable.
 * @see ASTM C1074 (equivalent age)
 */
export function potLife(input: PotLifeInput): WorkingTime {
  positive(input.testedMass, 'testedMass', 'kg');
  positive(input.batchMass, 'batchMass', 'kg');
  return workingTime(input);
}

/** Whether the batch is heavier than what the maker tested. */
export function potLifeBatchHeavierThanTested({ batchMass, testedMass }: PotLifeInput): boolean {
  return batchMass > testedMass;
}

export const potLifeFormula = /* @__PURE__ */ formula<PotLifeInput, WorkingTime>({
  id: 'cure/pot-life',
  title: 'Pot life at mixing temperature',
  search: ['working life', 'gel'],
  compute: potLife,
  equation: {
    algorithm:
      "With the maker's activation energy that one value; without it the times of the low, the typical and the high energy. Each is t_ref / exp(E/R (1/T_ref - 1/T)); the shortest governs.",
  },
  inputs: {
    time: { symbol: 't_ref', kind: 'time', name: 'pot life at the reference temperature', sample: [120, 7200] },
    testedMass: { symbol: 'm_ref', kind: 'mass', name: 'mass tested', sample: [0.1, 0.5] },
    batchMass: { symbol: 'm', kind: 'mass', name: 'mass of the batch', sample: [0.1, 5] },
    referenceTemperature,
    temperature,
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
    workingTime: { symbol: 't', kind: 'time', name: 'pot life' },
    governingEnergy: { symbol: 'E_gov', kind: 'activation energy', name: 'activation energy that governs' },
    longest: { symbol: 't_long', kind: 'time', name: 'longest pot life of the bounds' },
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
    {
      sort: 'note',
      text: 'The temperature leaves the span in which the times were measured: the activation energy is extrapolated.',
      beyond: workingTimeLeavesTestedSpan,
    },
    {
      sort: 'note',
      text: "The maker's activation energy is missing: the shortest pot life of 40, 50 and 60 kJ/mol is taken.",
      beyond: activationEnergyMissing,
    },
    {
      sort: 'note',
      text: 'The batch is heavier than the mass that was tested: its pot life is shorter than this figure.',
      beyond: potLifeBatchHeavierThanTested,
    },
  ],
});

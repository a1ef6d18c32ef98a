import { atMost, positive } from '../../formula/index.js';
import type { ActivationEnergy } from '../../quantity/index.js';

/** The maker's activation energy, or the three to take in its place. */
export interface EnergyChoice {
  readonly activationEnergy?: ActivationEnergy | undefined;
  readonly lowEnergy?: ActivationEnergy | undefined;
  readonly typicalEnergy?: ActivationEnergy | undefined;
  readonly highEnergy?: ActivationEnergy | undefined;
}

/**
 * The activation energies to compute with: the maker's own, or 40, 50 and 60 kJ/mol where it is missing. The three span
 * what is published for amine-cured epoxy, redox-cured vinyl ester and two-part polyurethane; the choice is ours.
 */
export function energiesOf(choice: EnergyChoice): readonly number[] {
  const { activationEnergy, lowEnergy = 40e3, typicalEnergy = 50e3, highEnergy = 60e3 } = choice;
  positive(lowEnergy, 'lowEnergy', 'J/mol');
  positive(typicalEnergy, 'typicalEnergy', 'J/mol');
  positive(highEnergy, 'highEnergy', 'J/mol');
  atMost(lowEnergy, typicalEnergy, 'the typical energy', 'lowEnergy', 'J/mol');
  atMost(typicalEnergy, highEnergy, 'the high energy', 'typicalEnergy', 'J/mol');
  if (activationEnergy === undefined) return [lowEnergy, typicalEnergy, highEnergy];
  positive(activationEnergy, 'activationEnergy', 'J/mol');
  return [activationEnergy];
}

/**
 * Whether the three bounds stand in for the maker's activation energy.
 *
 * @param choice what the maker states
 */
export function activationEnergyMissing({ activationEnergy }: EnergyChoice): boolean {
  return activationEnergy === undefined;
}

/** The longest and the shortest of the times that the energies give, each with its energy. */
export function extremes(
  energies: readonly number[],
  timeAt: (energy: number) => number,
): { readonly longest: number; readonly longestBy: number; readonly shortest: number; readonly shortestBy: number } {
  let [longest, longestBy, shortest, shortestBy] = [Number.NEGATIVE_INFINITY, 0, Number.POSITIVE_INFINITY, 0];
  for (const energy of energies) {
    const time = timeAt(energy);
    if (time > longest) [longest, longestBy] = [time, energy];
    if (time < shortest) [shortest, shortestBy] = [time, energy];
  }
  return { longest, longestBy, shortest, shortestBy };
}

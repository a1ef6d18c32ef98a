import { finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { Energy, Mass, SpecificEnergy } from '../../quantity/index.js';

export interface TntEquivalentInput {
  readonly energy: Energy;
  readonly specificEnergy?: SpecificEnergy | undefined;
}

/**
 * Mass of TNT that sets free as much energy.
 *
 * $$m = \frac{E}{q}$$
 *
 * @param input.energy         E, stored energy [J], >= 0
 * @param input.specificEnergy q, energy of TNT [J/kg], > 0; 4.26692 MJ/kg when not given
 * @returns mass of TNT [kg]
 * @throws CalculationError `invalid-input`
 * @remarks The default gives 8 % more TNT than the 4.62 to 4.63 MJ/kg of laboratory manuals.
 * @see ASME PCC-2, article 501, as quoted on a piping page
 */
export function tntEquivalent(input: TntEquivalentInput): Mass {
  const { energy: E, specificEnergy: q = 4266920 as SpecificEnergy } = input;
  nonNegative(E, 'energy', 'J');
  positive(q, 'specificEnergy', 'J/kg');
  const m = E / q;
  finite(m, 'mass of TNT', 'kg');
  return m as Mass;
}

export const tntEquivalentFormula = /* @__PURE__ */ formula<TntEquivalentInput, Mass>({
  id: 'acceptance/tnt-equivalent',
  title: 'TNT equivalent',
  search: ['blast', 'stored energy', 'pneumatic test'],
  compute: tntEquivalent,
  equation: { expression: 'E / q' },
  inputs: {
    energy: { symbol: 'E', kind: 'energy', name: 'stored energy', sample: [0, 500e6] },
    specificEnergy: {
      symbol: 'q',
      kind: 'specific energy',
      name: 'energy of TNT',
      sample: [4.1e6, 4.7e6],
      default: 4266920,
    },
  },
  output: { symbol: 'm', kind: 'mass', name: 'mass of TNT' },
  sources: [{ key: 'test-energy-page', locator: 'article 501, appendix II' }],
  evidence: { form: { tag: 'secondary' }, specificEnergy: { tag: 'secondary' } },
  limits: [],
});

import { formula, positive, wholeNumber } from '../../formula/index.js';
import type { MolarMass } from '../../quantity/index.js';

export interface HydrogenEquivalentWeightInput {
  readonly molarMass: MolarMass;
  readonly activeHydrogens: number;
}

/**
 * Mass of an amine that holds one mole of active hydrogen.
 *
 * $$E_h = \frac{M}{n_H}$$
 *
 * @param input.molarMass M, molar mass of the amine [kg/mol], > 0
 * @param input.activeHydrogens n_H, active hydrogens in a molecule, whole, 1 or above
 * @returns active-hydrogen equivalent weight [kg/mol]
 * @throws CalculationError `invalid-input`
 * @see worked examples of mixing on public web pages
 */
export function hydrogenEquivalentWeight(input: HydrogenEquivalentWeightInput): MolarMass {
  const { molarMass: M, activeHydrogens: nH } = input;
  positive(M, 'molarMass', 'kg/mol');
  wholeNumber(nH, 1, 'activeHydrogens');
  return (M / nH) as MolarMass;
}

export const hydrogenEquivalentWeightFormula = /* @__PURE__ */ formula<HydrogenEquivalentWeightInput, MolarMass>({
  id: 'resin/hydrogen-equivalent-weight',
  title: 'Active-hydrogen equivalent weight',
  search: ['ahew', 'amine'],
  compute: hydrogenEquivalentWeight,
  equation: { expression: 'M / n_H' },
  inputs: {
    molarMass: { symbol: 'M', kind: 'molar mass', name: 'molar mass of the amine', sample: [0.06, 0.5] },
    activeHydrogens: { symbol: 'n_H', kind: 'count', name: 'active hydrogens in a molecule', sample: [2, 8] },
  },
  output: { symbol: 'E_h', kind: 'molar mass', name: 'active-hydrogen equivalent weight' },
  sources: [{ key: 'web-mixing-examples', locator: 'diethylenetriamine' }],
  evidence: { form: { tag: 'secondary', derived: 'count of reactive groups' } },
  limits: [],
});

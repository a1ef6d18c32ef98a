import { formula, positive } from '../../formula/index.js';
import type { MolarMass } from '../../quantity/index.js';

export interface HardenerPartsInput {
  readonly hydrogenEquivalentWeight: MolarMass;
  readonly epoxyEquivalentWeight: MolarMass;
}

/**
 * Parts of hardener by mass for 100 parts of resin at equal numbers of reactive groups.
 *
 * $$p = 100 \frac{E_h}{E_e}$$
 *
 * @param input.hydrogenEquivalentWeight E_h, mass of hardener that holds one mole of active hydrogen [kg/mol], > 0
 * @param input.epoxyEquivalentWeight E_e, mass of resin that holds one mole of epoxide [kg/mol], > 0
 * @returns parts of hardener for 100 parts of resin by mass
 * @throws CalculationError `invalid-input`
 * @remarks The maker's mixing ratio governs; it may be set off the stoichiometric one on purpose.
 * @see worked examples of mixing on public web pages
 */
export function hardenerParts(input: HardenerPartsInput): number {
  const { hydrogenEquivalentWeight: Eh, epoxyEquivalentWeight: Ee } = input;
  positive(Eh, 'hydrogenEquivalentWeight', 'kg/mol');
  positive(Ee, 'epoxyEquivalentWeight', 'kg/mol');
  const p = (100 * Eh) / Ee;
  positive(p, 'hardenerParts', '');
  return p;
}

export const hardenerPartsFormula = /* @__PURE__ */ formula<HardenerPartsInput, number>({
  id: 'resin/hardener-parts',
  title: 'Parts of hardener for 100 parts of resin',
  search: ['phr', 'mix ratio', 'amine', 'epoxy'],
  compute: hardenerParts,
  equation: { expression: '100 * E_h / E_e' },
  inputs: {
    hydrogenEquivalentWeight: {
      symbol: 'E_h',
      kind: 'molar mass',
      name: 'mass of hardener that holds one mole of active hydrogen',
      sample: [0.02, 0.2],
    },
    epoxyEquivalentWeight: {
      symbol: 'E_e',
      kind: 'molar mass',
      name: 'mass of resin that holds one mole of epoxide',
      sample: [0.15, 0.6],
    },
  },
  output: { symbol: 'p', kind: 'number', name: 'parts of hardener for 100 parts of resin' },
  sources: [{ key: 'web-mixing-examples', locator: 'diethylenetriamine' }],
  evidence: { form: { tag: 'secondary', derived: 'count of reactive groups' } },
  limits: [],
});

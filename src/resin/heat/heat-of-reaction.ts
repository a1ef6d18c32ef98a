import { formula, positive } from '../../formula/index.js';
import type { MolarEnthalpy, MolarMass, SpecificEnergy } from '../../quantity/index.js';

export interface HeatOfReactionInput {
  readonly heatPerEpoxide: MolarEnthalpy;
  readonly epoxyEquivalentWeight: MolarMass;
  readonly hydrogenEquivalentWeight: MolarMass;
}

/**
 * Heat of reaction per mass of an epoxy and amine mix, from the heat per mole of epoxide.
 *
 * $$H = \frac{h}{E_e + E_h}$$
 *
 * @param input.heatPerEpoxide h, heat of reaction per mole of epoxide [J/mol], > 0
 * @param input.epoxyEquivalentWeight E_e, mass of resin that holds one mole of epoxide [kg/mol], > 0
 * @param input.hydrogenEquivalentWeight E_h, mass of hardener that holds one mole of active hydrogen [kg/mol], > 0
 * @returns heat of reaction per mass of mix [J/kg]
 * @throws CalculationError `invalid-input`
 * @remarks About 100 to 118 kJ per mole of epoxide, as recalled.
 * @see Horie and others 1970, as recalled
 */
export function heatOfReaction(input: HeatOfReactionInput): SpecificEnergy {
  const { heatPerEpoxide: h, epoxyEquivalentWeight: Ee, hydrogenEquivalentWeight: Eh } = input;
  positive(h, 'heatPerEpoxide', 'J/mol');
  positive(Ee, 'epoxyEquivalentWeight', 'kg/mol');
  positive(Eh, 'hydrogenEquivalentWeight', 'kg/mol');
  const H = h / (Ee + Eh);
  positive(H, 'heatOfReaction', 'J/kg');
  return H as SpecificEnergy;
}

export const heatOfReactionFormula = /* @__PURE__ */ formula<HeatOfReactionInput, SpecificEnergy>({
  id: 'resin/heat-of-reaction',
  title: 'Heat of reaction per mass of mix',
  search: ['exotherm'],
  compute: heatOfReaction,
  equation: { expression: 'h / (E_e + E_h)' },
  inputs: {
    heatPerEpoxide: {
      symbol: 'h',
      kind: 'molar enthalpy',
      name: 'heat of reaction per mole of epoxide',
      sample: [90000.0, 120000.0],
    },
    epoxyEquivalentWeight: {
      symbol: 'E_e',
      kind: 'molar mass',
      name: 'mass of resin that holds one mole of epoxide',
      sample: [0.15, 0.6],
    },
    hydrogenEquivalentWeight: {
      symbol: 'E_h',
      kind: 'molar mass',
      name: 'mass of hardener that holds one mole of active hydrogen',
      sample: [0.02, 0.2],
    },
  },
  output: { symbol: 'H', kind: 'specific energy', name: 'heat of reaction per mass of mix' },
  sources: [{ key: 'horie', locator: 'heat per epoxide' }],
  evidence: { form: { tag: 'recalled', derived: 'count of reactive groups' } },
  limits: [],
});

import { formula, listOfRows, nonNegative, positive, wholeNumber } from '../../formula/index.js';
import type { Mass, MolarMass } from '../../quantity/index.js';

/** One reactive component: its mass, and the mass that holds one mole of reactive groups. */
export interface ReactiveComponent {
  /** Mass of it in the blend. */
  readonly mass: Mass;
  /** Its mass for each mole of reactive groups. */
  readonly equivalentWeight: MolarMass;
}

export interface BlendEquivalentWeightInput {
  readonly components: readonly ReactiveComponent[];
  readonly inertMass?: Mass | undefined;
}

/**
 * Equivalent weight of a blend of reactive components, with filler that counts in the mass and not in the
 * equivalents.
 *
 * $$E = \frac{\sum m_i + m_0}{\sum m_i / E_i}$$
 *
 * @param input.components components, mass and equivalent weight of each reactive component, at least one; each mass
 *   and equivalent weight > 0
 * @param input.inertMass m_0, mass of filler and diluent without reactive groups [kg], >= 0; 0 when not given
 * @returns mass of the blend that holds one mole of reactive groups [kg/mol]
 * @throws CalculationError `invalid-input`
 * @see worked examples of mixing on public web pages
 */
export function blendEquivalentWeight(input: BlendEquivalentWeightInput): MolarMass {
  const { components, inertMass: m0 = 0 as Mass } = input;
  nonNegative(m0, 'inertMass', 'kg');
  listOfRows(components, 'components');
  wholeNumber(components.length, 1, 'number of components');
  let [mass, equivalents] = [m0 as number, 0];
  components.forEach(({ mass: m, equivalentWeight: E }, index) => {
    positive(m, `components[${index}].mass`, 'kg');
    positive(E, `components[${index}].equivalentWeight`, 'kg/mol');
    mass += m;
    equivalents += m / E;
  });
  const E = mass / equivalents;
  positive(E, 'blendEquivalentWeight', 'kg/mol');
  return E as MolarMass;
}

export const blendEquivalentWeightFormula = /* @__PURE__ */ formula<BlendEquivalentWeightInput, MolarMass>({
  id: 'resin/blend-equivalent-weight',
  title: 'Equivalent weight of a blend',
  search: ['eew', 'epoxy'],
  compute: blendEquivalentWeight,
  equation: {
    algorithm:
      'The mass of all components and of the filler over the sum of the equivalents m / E of the reactive ones.',
  },
  inputs: {
    components: {
      symbol: 'components',
      kind: 'list',
      name: 'mass and equivalent weight of each reactive component',
      columns: { mass: 'mass', equivalentWeight: 'molar mass' },
    },
    inertMass: {
      symbol: 'm_0',
      kind: 'mass',
      name: 'mass of filler and diluent without reactive groups',
      sample: [0, 1],
      default: 0,
    },
  },
  output: { symbol: 'E', kind: 'molar mass', name: 'equivalent weight of the blend' },
  sources: [{ key: 'web-mixing-examples', locator: 'blend of two epoxies and a filler' }],
  evidence: { form: { tag: 'secondary', derived: 'count of reactive groups' } },
  limits: [],
});

import { formula, nonNegative, positive } from '../../formula/index.js';
import type { Mass, Ratio } from '../../quantity/index.js';

export interface MassWithoutWasteInput {
  readonly mass: Mass;
  readonly waste: Ratio;
}

/**
 * What of a mass to mix must lie on the pipe: the mass without its allowance for waste.
 *
 * $$m = \frac{m_w}{1 + \omega}$$
 *
 * @param input.mass   m_w, with waste [kg], > 0
 * @param input.waste  omega, as a part of the amount [1], >= 0
 * @returns mass that is laid [kg]
 * @throws CalculationError `invalid-input`
 */
export function massWithoutWaste(input: MassWithoutWasteInput): Mass {
  const { mass, waste: omega } = input;
  positive(mass, 'mass', 'kg');
  nonNegative(omega, 'waste', '');
  return (mass / (1 + omega)) as Mass;
}

export const massWithoutWasteFormula = /* @__PURE__ */ formula<MassWithoutWasteInput, Mass>({
  id: 'resin/mass-without-waste',
  title: 'Mass that must lie on the pipe',
  compute: massWithoutWaste,
  equation: { expression: 'm_w / (1 + omega)' },
  inputs: {
    mass: { symbol: 'm_w', kind: 'mass', name: 'mass with waste', sample: [0.05, 50] },
    waste: { symbol: 'omega', kind: 'ratio', name: 'waste as a part of the amount', sample: [0, 0.4] },
  },
  output: { symbol: 'm', kind: 'mass', name: 'mass laid' },
  sources: [],
  evidence: { form: { tag: 'practice' } },
  limits: [],
});

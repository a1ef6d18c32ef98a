import { finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { Length, Mass } from '../../quantity/index.js';

export interface MassAlongLengthInput {
  readonly mass: Mass;
  readonly length: Length;
  readonly part: Length;
}

/**
 * Mass of resin that goes with a part of the tape or sheet, spread evenly over all of it.
 *
 * $$m_p = m \frac{l}{L}$$
 *
 * @param input.mass   m, mass for all of it [kg], > 0
 * @param input.length L, all of the tape or sheet [m], > 0
 * @param input.part   l, the part [m], >= 0
 * @returns mass for the part [kg]
 * @throws CalculationError `invalid-input`
 */
export function massAlongLength(input: MassAlongLengthInput): Mass {
  const { mass: m, length: L, part: l } = input;
  positive(m, 'mass', 'kg');
  positive(L, 'length', 'm');
  nonNegative(l, 'part', 'm');
  const part = m * (l / L);
  finite(part, 'mass of the part', 'kg');
  return part as Mass;
}

export const massAlongLengthFormula = /* @__PURE__ */ formula<MassAlongLengthInput, Mass>({
  id: 'resin/mass-along-length',
  title: 'Resin for a part of the tape or sheet',
  compute: massAlongLength,
  equation: { expression: 'm * (l / L)' },
  inputs: {
    mass: { symbol: 'm', kind: 'mass', name: 'resin for all of it', sample: [0.2, 20] },
    length: { symbol: 'L', kind: 'length', name: 'all of the tape or sheet', sample: [5, 200] },
    part: { symbol: 'l', kind: 'length', name: 'this part of the tape or sheet', sample: [1, 50] },
  },
  output: { symbol: 'm_p', kind: 'mass', name: 'resin for the part' },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'the parts of a length take the whole mass' } },
  limits: [],
});

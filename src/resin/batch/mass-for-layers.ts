import { finite, formula, positive, wholeNumber } from '../../formula/index.js';
import type { Mass } from '../../quantity/index.js';

export interface MassForLayersInput {
  readonly mass: Mass;
  readonly planned: number;
  readonly layers: number;
}

/**
 * Mass of resin for another number of layers than was planned, each of which takes as much.
 *
 * $$m_n = m \frac{n}{n_0}$$
 *
 * @param input.mass    m, resin for the planned layers [kg], > 0
 * @param input.planned n_0, layers that were planned, whole, >= 1
 * @param input.layers  n, layers that were laid, whole, >= 1
 * @returns mass of resin [kg]
 * @throws CalculationError `invalid-input`
 */
export function massForLayers(input: MassForLayersInput): Mass {
  const { mass: m, planned: n0, layers: n } = input;
  positive(m, 'mass', 'kg');
  wholeNumber(n0, 1, 'planned');
  wholeNumber(n, 1, 'layers');
  const mass = (m * n) / n0;
  finite(mass, 'mass for the layers', 'kg');
  return mass as Mass;
}

export const massForLayersFormula = /* @__PURE__ */ formula<MassForLayersInput, Mass>({
  id: 'resin/mass-for-layers',
  title: 'Resin for more layers than planned',
  compute: massForLayers,
  equation: { expression: 'm * n / n_0' },
  inputs: {
    mass: { symbol: 'm', kind: 'mass', name: 'resin for the planned layers', sample: [0.2, 20] },
    planned: { symbol: 'n_0', kind: 'count', name: 'layers that were planned', sample: [2, 20] },
    layers: { symbol: 'n', kind: 'count', name: 'layers that were laid', sample: [2, 30] },
  },
  output: { symbol: 'm_n', kind: 'mass', name: 'resin for the layers that were laid' },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'a wetted layer at a time' } },
  limits: [],
});

import { formula, positive } from '../../formula/index.js';
import type { Density, Mass, Volume } from '../../quantity/index.js';

export interface MassInput {
  readonly volume: Volume;
  readonly density: Density;
}

/**
 * Mass of a volume of material.
 *
 * $$m = \rho V$$
 *
 * @param input.volume V, volume [m3], > 0
 * @param input.density rho, density [kg/m3], > 0
 * @returns mass [kg]
 * @throws CalculationError `invalid-input`
 * @see worked examples of mixing on public web pages
 */
export function mass(input: MassInput): Mass {
  const { volume: V, density: rho } = input;
  positive(V, 'volume', 'm3');
  positive(rho, 'density', 'kg/m3');
  const m = rho * V;
  positive(m, 'mass', 'kg');
  return m as Mass;
}

export const massFormula = /* @__PURE__ */ formula<MassInput, Mass>({
  id: 'resin/mass',
  title: 'Mass of a volume',
  search: ['weight', 'density'],
  compute: mass,
  equation: { expression: 'rho * V' },
  inputs: {
    volume: { symbol: 'V', kind: 'volume', name: 'volume', sample: [1e-6, 0.05] },
    density: { symbol: 'rho', kind: 'density', name: 'density', sample: [700, 2200] },
  },
  output: { symbol: 'm', kind: 'mass', name: 'mass' },
  sources: [{ key: 'web-mixing-examples', locator: 'pour of 10 litres' }],
  evidence: { form: { tag: 'secondary' } },
  limits: [],
});

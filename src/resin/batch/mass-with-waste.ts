import { formula, nonNegative, positive } from '../../formula/index.js';
import type { Density, Mass, Ratio, Volume } from '../../quantity/index.js';

export interface MassWithWasteInput {
  readonly volume: Volume;
  readonly density: Density;
  readonly waste?: Ratio | undefined;
}

/**
 * Mass to mix so that a volume of filler or resin is left after waste.
 *
 * $$m_w = \rho V (1 + \omega)$$
 *
 * @param input.volume V, volume [m3], > 0
 * @param input.density rho, density [kg/m3], > 0
 * @param input.waste omega, waste as a part of the amount [1], >= 0; 0.15 when not given
 * @returns mass with waste [kg]
 * @throws CalculationError `invalid-input`
 * @remarks 10 to 25 % is usual for hand-mixed filler.
 */
export function massWithWaste(input: MassWithWasteInput): Mass {
  const { volume: V, density: rho, waste: omega = 0.15 as Ratio } = input;
  positive(V, 'volume', 'm3');
  positive(rho, 'density', 'kg/m3');
  nonNegative(omega, 'waste', '');
  const m = rho * V * (1 + omega);
  positive(m, 'massWithWaste', 'kg');
  return m as Mass;
}

export const massWithWasteFormula = /* @__PURE__ */ formula<MassWithWasteInput, Mass>({
  id: 'resin/mass-with-waste',
  title: 'Mass to mix',
  search: ['how much to mix'],
  compute: massWithWaste,
  equation: { expression: 'rho * V * (1 + omega)' },
  inputs: {
    volume: { symbol: 'V', kind: 'volume', name: 'volume', sample: [1e-6, 0.05] },
    density: { symbol: 'rho', kind: 'density', name: 'density', sample: [700, 2200] },
    waste: { symbol: 'omega', kind: 'ratio', name: 'waste as a part of the amount', sample: [0, 0.4], default: 0.15 },
  },
  output: { symbol: 'm_w', kind: 'mass', name: 'mass with waste' },
  sources: [],
  evidence: { form: { tag: 'practice' }, waste: { tag: 'practice', note: '10 to 25 %' } },
  limits: [],
});

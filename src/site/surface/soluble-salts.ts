import { finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { Area, ArealWeight, Conductivity, SaltConductanceFactor, Volume } from '../../quantity/index.js';

export interface SolubleSaltsInput {
  readonly waterVolume: Volume;
  readonly area: Area;
  readonly conductivityRise: Conductivity;
  readonly factor?: SaltConductanceFactor | undefined;
}

/**
 * Soluble salts on the steel, from the conductivity of the water that washed a patch.
 *
 * $$\rho_A = \frac{c\,V\,\Delta\gamma}{A}$$
 *
 * @param input.waterVolume      V, of the water [m3], > 0
 * @param input.area             A, of the patch [m2], > 0
 * @param input.conductivityRise dg, conductivity after less before [S/m], >= 0
 * @param input.factor           c; 5 kg/(m2 S) when absent, > 0
 * @returns salts by area, as mixed salts [kg/m2]
 * @throws CalculationError `invalid-input`
 * @remarks 6 mg/m2 for every uS/cm at 15 mL on 1250 mm2. One test is good for about 8.2 mg/m2 either way, so that near a
 *   limit of 20 mg/m2 one reading decides nothing.
 * @see ISO 8502-9
 */
export function solubleSalts(input: SolubleSaltsInput): ArealWeight {
  const { waterVolume: V, area: A, conductivityRise: rise, factor: c = 5 as SaltConductanceFactor } = input;
  positive(V, 'waterVolume', 'm3');
  positive(A, 'area', 'm2');
  nonNegative(rise, 'conductivityRise', 'S/m');
  positive(c, 'factor', 'kg/(m2 S)');
  const salts = (c * V * rise) / A;
  finite(salts, 'waterVolume', 'm3');
  return salts as ArealWeight;
}

export const solubleSaltsFormula = /* @__PURE__ */ formula<SolubleSaltsInput, ArealWeight>({
  id: 'site/soluble-salts',
  title: 'Soluble salts by conductivity',
  search: ['bresle', 'chlorides', 'salt test'],
  compute: solubleSalts,
  equation: { expression: 'c * V * dg / A' },
  inputs: {
    waterVolume: { symbol: 'V', kind: 'volume', name: 'volume of the water', sample: [2e-6, 2e-5] },
    area: { symbol: 'A', kind: 'area', name: 'area of the patch', sample: [5e-4, 2e-3] },
    conductivityRise: { symbol: 'dg', kind: 'conductivity', name: 'rise of the conductivity', sample: [0, 5e-3] },
    factor: {
      symbol: 'c',
      kind: 'salt conductance factor',
      name: 'salt conductance factor',
      sample: [4, 6],
      default: 5,
    },
  },
  output: { symbol: 'rho_A', kind: 'areal weight', name: 'salts by area' },
  sources: [{ key: 'iso-8502-9', locator: 'conversion' }],
  evidence: { form: { tag: 'recalled' }, c: { tag: 'recalled' } },
  limits: [],
});

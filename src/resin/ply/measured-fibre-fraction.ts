import { formula, positive, refuse, wholeNumber } from '../../formula/index.js';
import type { ArealWeight, Density, Length, Ratio } from '../../quantity/index.js';

export interface MeasuredFibreFractionInput {
  readonly plies: number;
  readonly arealWeight: ArealWeight;
  readonly fibreDensity: Density;
  readonly thickness: Length;
}

/**
 * Fibre volume fraction of a laminate from its measured thickness and the fabric in it.
 *
 * $$V_f = \frac{n W_f}{\rho_f t}$$
 *
 * @param input.plies n, plies, whole, 1 or above
 * @param input.arealWeight W_f, mass of dry fabric per area of one ply [kg/m2], > 0
 * @param input.fibreDensity rho_f, density of the fibre [kg/m3], > 0
 * @param input.thickness t, measured thickness of the laminate [m], > 0, and thick enough to hold the fibre
 * @returns fibre volume fraction [1]
 * @throws CalculationError `invalid-input`; `no-solution` when the fibre alone is thicker
 * @see worked examples of mixing on public web pages
 */
export function measuredFibreFraction(input: MeasuredFibreFractionInput): Ratio {
  const { plies: n, arealWeight: Wf, fibreDensity: rhoF, thickness: t } = input;
  wholeNumber(n, 1, 'plies');
  positive(Wf, 'arealWeight', 'kg/m2');
  positive(rhoF, 'fibreDensity', 'kg/m3');
  positive(t, 'thickness', 'm');
  const Vf = (n * Wf) / (rhoF * t);
  if (!(Vf <= 1)) tooThin(t);
  positive(Vf, 'measuredFibreFraction', '');
  return Vf as Ratio;
}

function tooThin(value: number): never {
  refuse({
    code: 'no-solution',
    parameter: 'thickness',
    value,
    unit: 'm',
    constraint: 'must be at least that of the fibre alone; check the count of plies and the areal weight',
  });
}

export const measuredFibreFractionFormula = /* @__PURE__ */ formula<MeasuredFibreFractionInput, Ratio>({
  id: 'resin/measured-fibre-fraction',
  title: 'Fibre volume fraction from a measured thickness',
  compute: measuredFibreFraction,
  equation: { expression: 'n * W_f / (rho_f * t)' },
  inputs: {
    plies: { symbol: 'n', kind: 'count', name: 'plies', sample: [1, 30] },
    arealWeight: {
      symbol: 'W_f',
      kind: 'areal weight',
      name: 'mass of dry fabric per area of one ply',
      sample: [0.1, 1.5],
    },
    fibreDensity: { symbol: 'rho_f', kind: 'density', name: 'density of the fibre', sample: [1400, 2700] },
    thickness: { symbol: 't', kind: 'length', name: 'measured thickness of the laminate', sample: [0.001, 0.04] },
  },
  output: { symbol: 'V_f', kind: 'ratio', name: 'fibre volume fraction' },
  sources: [{ key: 'web-mixing-examples', locator: 'page on fibre volume' }],
  evidence: { form: { tag: 'secondary', derived: 'inverse of the ply thickness' } },
  limits: [],
});

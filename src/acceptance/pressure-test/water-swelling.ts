import { finite, formula, positive } from '../../formula/index.js';
import type { Density, Ratio } from '../../quantity/index.js';

export interface WaterSwellingInput {
  readonly density: Density;
  readonly referenceDensity?: Density | undefined;
}

/**
 * Volume of water over its volume at another temperature, both without pressure: its volume factor by its density.
 *
 * $$F = \frac{\rho_0}{\rho}$$
 *
 * @param input.density          rho, at its temperature [kg/m3], > 0
 * @param input.referenceDensity rho_0, at the other [kg/m3], > 0; 999.01 at 60 degF (Kell) when not given
 * @returns factor [1]
 * @throws CalculationError `invalid-input`
 */
export function waterSwelling(input: WaterSwellingInput): Ratio {
  const { density: rho, referenceDensity: rho0 = 999.0140571257656 as Density } = input;
  positive(rho, 'density', 'kg/m3');
  positive(rho0, 'referenceDensity', 'kg/m3');
  const F = rho0 / rho;
  finite(F, 'swelling', '');
  return F as Ratio;
}

export const waterSwellingFormula = /* @__PURE__ */ formula<WaterSwellingInput, Ratio>({
  id: 'acceptance/water-swelling',
  title: 'Volume of water by its density',
  compute: waterSwelling,
  equation: { expression: 'rho_0 / rho' },
  inputs: {
    density: { symbol: 'rho', kind: 'density', name: 'density of the water', sample: [993, 1000] },
    referenceDensity: {
      symbol: 'rho_0',
      kind: 'density',
      name: 'density at 60 degF',
      sample: [998, 1000],
      default: 999.0140571257656,
    },
  },
  output: { symbol: 'F', kind: 'ratio', name: 'volume of the water over that at 60 degF' },
  sources: [],
  evidence: {
    form: { tag: 'chosen', derived: 'the same mass of water at both temperatures' },
    referenceDensity: { tag: 'recalled', note: 'Kell (1975) at 60 degF' },
  },
  limits: [],
});

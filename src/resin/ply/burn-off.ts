import { below, finite, formula, positive } from '../../formula/index.js';
import type { Density, Mass, Ratio } from '../../quantity/index.js';

export interface BurnOff {
  readonly fibreVolumeFraction: Ratio;
  readonly matrixVolumeFraction: Ratio;
  readonly voidFraction: Ratio;
  readonly fibreMassFraction: Ratio;
}

export interface BurnOffInput {
  readonly sampleMass: Mass;
  readonly fibreMass: Mass;
  readonly laminateDensity: Density;
  readonly fibreDensity: Density;
  readonly resinDensity: Density;
}

/**
 * Volume fractions of fibre, matrix and voids of a sample whose resin was burnt or digested away.
 *
 * $$V_f = \frac{m_1}{m_0} \frac{\rho_c}{\rho_f}$$
 *
 * @param input.sampleMass m_0, mass of the sample [kg], > 0
 * @param input.fibreMass m_1, mass of fibre that is left [kg], > 0 and < m_0
 * @param input.laminateDensity rho_c, density of the sample [kg/m3], > 0
 * @param input.fibreDensity rho_f, density of the fibre [kg/m3], > 0
 * @param input.resinDensity rho_m, density of the cured resin [kg/m3], > 0
 * @returns volume fractions of fibre, matrix and voids, and the fibre mass fraction [1]
 * @throws CalculationError `invalid-input`
 * @remarks A void fraction a few tenths of a per cent below zero is the error of measurement, and is returned as it
 *   is.
 * @see ASTM D3171, as recalled
 */
export function burnOff(input: BurnOffInput): BurnOff {
  const { sampleMass: m0, fibreMass: m1, laminateDensity: rhoC, fibreDensity: rhoF, resinDensity: rhoM } = input;
  positive(m0, 'sampleMass', 'kg');
  positive(m1, 'fibreMass', 'kg');
  positive(rhoC, 'laminateDensity', 'kg/m3');
  positive(rhoF, 'fibreDensity', 'kg/m3');
  positive(rhoM, 'resinDensity', 'kg/m3');
  below(m1, m0, 'the mass of the sample', 'fibreMass', 'kg');
  const wF = m1 / m0;
  const Vf = wF * (rhoC / rhoF);
  const Vm = (1 - wF) * (rhoC / rhoM);
  finite(Vf + Vm, 'laminateDensity', 'kg/m3');
  return {
    fibreVolumeFraction: Vf as Ratio,
    matrixVolumeFraction: Vm as Ratio,
    voidFraction: (1 - Vf - Vm) as Ratio,
    fibreMassFraction: wF as Ratio,
  };
}

/** Whether the void fraction is below -0.5 %, more than errors of measurement explain. */
export function burnOffVoidsBelowZero(input: BurnOffInput): boolean {
  return burnOff(input).voidFraction < -0.005;
}

export const burnOffFormula = /* @__PURE__ */ formula<BurnOffInput, BurnOff>({
  id: 'resin/burn-off',
  title: 'Fractions from a burn-off test',
  search: ['fibre content', 'glass content', 'ignition loss'],
  compute: burnOff,
  equation: { expression: 'm_1 / m_0 * (rho_c / rho_f)' },
  inputs: {
    sampleMass: { symbol: 'm_0', kind: 'mass', name: 'mass of the sample', sample: [0.001, 0.02] },
    fibreMass: { symbol: 'm_1', kind: 'mass', name: 'mass of fibre that is left', sample: [0.0005, 0.02] },
    laminateDensity: { symbol: 'rho_c', kind: 'density', name: 'density of the sample', sample: [1300, 2200] },
    fibreDensity: { symbol: 'rho_f', kind: 'density', name: 'density of the fibre', sample: [1400, 2700] },
    resinDensity: { symbol: 'rho_m', kind: 'density', name: 'density of the cured resin', sample: [950, 1400] },
  },
  output: {
    fibreVolumeFraction: { symbol: 'V_f', kind: 'ratio', name: 'fibre volume fraction' },
    matrixVolumeFraction: { symbol: 'V_m', kind: 'ratio', name: 'matrix volume fraction' },
    voidFraction: { symbol: 'V_v', kind: 'ratio', name: 'void fraction' },
    fibreMassFraction: { symbol: 'w_f', kind: 'ratio', name: 'fibre mass fraction' },
  },
  sources: [{ key: 'astm-d3171', locator: 'procedure I' }],
  evidence: { form: { tag: 'recalled', derived: 'volumes of a unit mass' }, burnOffVoidsBelowZero: { tag: 'chosen' } },
  limits: [
    {
      sort: 'note',
      text: 'the void fraction is below -0.5 %: a density or a mass is wrong',
      beyond: burnOffVoidsBelowZero,
    },
  ],
});

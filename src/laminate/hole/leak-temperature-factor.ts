import { finite, formula, positive } from '../../formula/index.js';
import type { EnergyReleaseRate, Modulus } from '../../quantity/index.js';

export interface LeakTemperatureFactorInput {
  readonly energyAtDesignTemperature: EnergyReleaseRate;
  readonly energyAtTestTemperature: EnergyReleaseRate;
  readonly modulusAtDesignTemperature: Modulus;
  readonly modulusAtTestTemperature: Modulus;
}

/**
 * Temperature factor of a leak repair from bond energy and laminate modulus, both measured at the design temperature.
 *
 * $$f_{T2} = \min\left(1,\; \sqrt{\frac{\gamma_d E_d}{\gamma_0 E_0}}\right)$$
 *
 * @param input.energyAtDesignTemperature   gamma_d, energy release rate at the design temperature [J/m2], > 0
 * @param input.energyAtTestTemperature     gamma_0, that of the tests which the design uses [J/m2], > 0
 * @param input.modulusAtDesignTemperature  E_d, modulus at the design temperature [Pa], > 0
 * @param input.modulusAtTestTemperature    E_0, the same modulus at the temperature of the tests [Pa], > 0
 * @returns temperature factor, above 0 and at most 1
 * @throws CalculationError `invalid-input`
 * @remarks The pressure goes with the root of energy times stiffness. Give the modulus that falls most with temperature,
 *   as a rule the shear modulus. The factor that ISO 24817 prints is not known here.
 */
export function leakTemperatureFactor(input: LeakTemperatureFactorInput): number {
  const { energyAtDesignTemperature: gd, energyAtTestTemperature: g0 } = input;
  const { modulusAtDesignTemperature: Ed, modulusAtTestTemperature: E0 } = input;
  positive(gd, 'energyAtDesignTemperature', 'J/m2');
  positive(g0, 'energyAtTestTemperature', 'J/m2');
  positive(Ed, 'modulusAtDesignTemperature', 'Pa');
  positive(E0, 'modulusAtTestTemperature', 'Pa');
  const share = (gd / g0) * (Ed / E0);
  finite(share, 'share of energy and modulus', '');
  positive(share, 'share of energy and modulus', '');
  return share >= 1 ? 1 : Math.sqrt(share);
}

export const leakTemperatureFactorFormula = /* @__PURE__ */ formula<LeakTemperatureFactorInput, number>({
  id: 'laminate/leak-temperature-factor',
  title: 'Temperature factor of a leak repair',
  search: ['derating'],
  compute: leakTemperatureFactor,
  equation: {
    where: [{ symbol: 'r', kind: 'number', expression: 'gamma_d / gamma_0 * (E_d / E_0)' }],
    branches: [{ when: 'r >= 1', expression: '1' }, { expression: 'sqrt(r)' }],
  },
  inputs: {
    energyAtDesignTemperature: {
      symbol: 'gamma_d',
      kind: 'energy release rate',
      name: 'energy release rate at the design temperature',
      sample: [50, 300],
    },
    energyAtTestTemperature: {
      symbol: 'gamma_0',
      kind: 'energy release rate',
      name: 'energy release rate of the tests',
      sample: [100, 400],
    },
    modulusAtDesignTemperature: {
      symbol: 'E_d',
      kind: 'modulus',
      name: 'modulus at the design temperature',
      sample: [1e9, 30e9],
    },
    modulusAtTestTemperature: {
      symbol: 'E_0',
      kind: 'modulus',
      name: 'modulus at the temperature of the tests',
      sample: [2e9, 30e9],
    },
  },
  output: { symbol: 'f_T2', kind: 'number', name: 'temperature factor' },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'the hole equation with all moduli in one proportion' } },
  limits: [],
});

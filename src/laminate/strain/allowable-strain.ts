import { finite, formula, positive, refuse } from '../../formula/index.js';
import type { Strain, Temperature, ThermalExpansion } from '../../quantity/index.js';

export interface AllowableStrainInput {
  readonly defaultStrain: Strain;
  readonly temperatureFactor: number;
  readonly cyclicFactor: number;
  readonly designTemperature: Temperature;
  readonly installationTemperature: Temperature;
  readonly substrateExpansion: ThermalExpansion;
  readonly laminateExpansion: ThermalExpansion;
}

/**
 * Strain that a laminate may be designed to, in one direction.
 *
 * $$\varepsilon = f_c \left(f_{T1}\, \varepsilon_0 - |(T_d - T_i)(\alpha_s - \alpha)|\right)$$
 *
 * @param input.defaultStrain            eps_0, before temperature and cycles, > 0
 * @param input.temperatureFactor        f_T1, above 0, at most 1
 * @param input.cyclicFactor             f_c, above 0, at most 1
 * @param input.designTemperature        T_d [K], > 0
 * @param input.installationTemperature  T_i, of the pipe while the laminate cures [K], > 0
 * @param input.substrateExpansion       alpha_s [1/K]
 * @param input.laminateExpansion        alpha, of the laminate in the same direction [1/K]; below 0 for some carbon
 * @returns allowable strain, above 0
 * @throws CalculationError `invalid-input`; `no-solution` when the mismatch takes all of the strain
 * @remarks The mismatch is taken off whichever way it acts. Evaluate at the end of the temperature range that is farthest
 *   from installation as well as at the hottest one.
 * @see ISO 24817:2017, 7.5.5; ASME PCC-2, Eq. 10, as recalled
 */
export function allowableStrain(input: AllowableStrainInput): Strain {
  const { defaultStrain: eps0, temperatureFactor: fT, cyclicFactor: fc } = input;
  const { designTemperature: Td, installationTemperature: Ti, substrateExpansion: as, laminateExpansion: ac } = input;
  positive(eps0, 'defaultStrain', '');
  factor(fT, 'temperatureFactor');
  factor(fc, 'cyclicFactor');
  positive(Td, 'designTemperature', 'K');
  positive(Ti, 'installationTemperature', 'K');
  finite(as, 'substrateExpansion', '1/K');
  finite(ac, 'laminateExpansion', '1/K');
  const mismatch = Math.abs((Td - Ti) * (as - ac));
  const strain = fc * (fT * eps0 - mismatch);
  if (!(strain > 0)) {
    refuse({
      code: 'no-solution',
      parameter: 'defaultStrain',
      value: eps0,
      unit: '',
      constraint: `must be above ${mismatch / fT}, since the thermal mismatch takes ${mismatch} of it; install nearer to the design temperature or take a laminate whose expansion is nearer to that of the pipe`,
      source: 'after ISO 24817:2017, 7.5.5, as recalled',
    });
  }
  return strain as Strain;
}

function factor(value: number, parameter: string): void {
  if (!(value > 0 && value <= 1)) {
    refuse({ code: 'invalid-input', parameter, value, unit: '', constraint: 'must be above 0 and at most 1' });
  }
}

export const allowableStrainFormula = /* @__PURE__ */ formula<AllowableStrainInput, Strain>({
  id: 'laminate/allowable-strain',
  title: 'Allowable strain of the laminate',
  search: ['design strain', 'composite strain'],
  compute: allowableStrain,
  equation: { expression: 'f_c * (f_T1 * eps_0 - abs((T_d - T_i) * (alpha_s - alpha)))' },
  inputs: {
    defaultStrain: { symbol: 'eps_0', kind: 'strain', name: 'default strain', sample: [0.001, 0.004] },
    temperatureFactor: { symbol: 'f_T1', kind: 'number', name: 'temperature factor', sample: [0.7, 1] },
    cyclicFactor: { symbol: 'f_c', kind: 'number', name: 'cyclic factor', sample: [0.25, 1] },
    designTemperature: { symbol: 'T_d', kind: 'temperature', name: 'design temperature', sample: [260, 380] },
    installationTemperature: {
      symbol: 'T_i',
      kind: 'temperature',
      name: 'temperature of the pipe during cure',
      sample: [275, 320],
    },
    substrateExpansion: {
      symbol: 'alpha_s',
      kind: 'thermal expansion',
      name: 'thermal expansion of the pipe',
      sample: [10e-6, 18e-6],
    },
    laminateExpansion: {
      symbol: 'alpha',
      kind: 'thermal expansion',
      name: 'thermal expansion of the laminate',
      sample: [-1e-6, 30e-6],
    },
  },
  output: { symbol: 'eps', kind: 'strain', name: 'allowable strain' },
  sources: [
    { key: 'iso-24817', locator: '7.5.5, as recalled' },
    { key: 'asme-pcc-2', locator: '401-3.4, Eq. 10, as recalled' },
  ],
  evidence: {
    form: { tag: 'recalled' },
    mismatch: { tag: 'practice', note: 'absolute value; printed signed in one set' },
  },
  limits: [],
});

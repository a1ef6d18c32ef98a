import { finite, formula, positive, properFraction } from '../../formula/index.js';
import type { Modulus } from '../../quantity/index.js';
import { checkReciprocity } from '../reciprocity.js';

export interface PlateModulusInput {
  readonly hoopModulus: Modulus;
  readonly axialModulus: Modulus;
  readonly poissonRatio: number;
}

/**
 * Modulus with which a laminate bends as a plate over a round hole.
 *
 * $$E' = \frac{E_{ac}}{1 - \nu^2}, \qquad E_{ac} = \sqrt{E_a E_c}, \qquad \nu^2 = \nu_{ca}^2 \frac{E_a}{E_c}$$
 *
 * @param input.hoopModulus   E_c [Pa], > 0
 * @param input.axialModulus  E_a [Pa], > 0
 * @param input.poissonRatio  nu_ca, loaded along the hoop, contracting along the pipe, 0 to 1
 * @returns plate modulus [Pa]
 * @throws CalculationError `invalid-input`, also when nu^2 reaches 1, which no laminate can have
 * @see ISO 24817:2017, 7.5.7; ASME PCC-2, Eq. 12, as recalled
 */
export function plateModulus(input: PlateModulusInput): Modulus {
  const { hoopModulus: Ec, axialModulus: Ea, poissonRatio: nu } = input;
  positive(Ec, 'hoopModulus', 'Pa');
  positive(Ea, 'axialModulus', 'Pa');
  properFraction(nu, 'poissonRatio');
  const nu2 = checkReciprocity(nu, Ec, Ea);
  const modulus = Math.sqrt(Ea * Ec) / (1 - nu2);
  finite(modulus, 'plate modulus', 'Pa');
  return modulus as Modulus;
}

export const plateModulusFormula = /* @__PURE__ */ formula<PlateModulusInput, Modulus>({
  id: 'laminate/plate-modulus',
  title: 'Plate modulus over a hole',
  compute: plateModulus,
  equation: {
    where: [
      { symbol: 'E_ac', kind: 'modulus', expression: 'sqrt(E_a * E_c)' },
      { symbol: 'nu_2', kind: 'number', expression: 'nu_ca^2 * E_a / E_c' },
    ],
    expression: 'E_ac / (1 - nu_2)',
  },
  inputs: {
    hoopModulus: { symbol: 'E_c', kind: 'modulus', name: 'hoop modulus of the laminate', sample: [8e9, 80e9] },
    axialModulus: { symbol: 'E_a', kind: 'modulus', name: 'axial modulus of the laminate', sample: [4e9, 40e9] },
    poissonRatio: { symbol: 'nu_ca', kind: 'number', name: "Poisson's ratio, hoop to axial", sample: [0, 0.4] },
  },
  output: { symbol: 'E_p', kind: 'modulus', name: 'plate modulus' },
  sources: [
    { key: 'iso-24817', locator: '7.5.7, as recalled' },
    { key: 'asme-pcc-2', locator: '401-3.4, Eq. 12, as recalled' },
  ],
  evidence: {
    form: {
      tag: 'recalled',
      derived: 'isotropic plate theory in the isotropic limit',
      note: 'The one modulus sqrt(E_a E_c) in place of the orthotropic plate is off by -2.5 to +6.2 %.',
    },
  },
  limits: [],
});

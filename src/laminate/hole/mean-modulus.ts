import { finite, formula, positive } from '../../formula/index.js';
import type { Modulus } from '../../quantity/index.js';

export interface MeanModulusInput {
  readonly hoopModulus: Modulus;
  readonly axialModulus: Modulus;
}

/**
 * One modulus for the two directions of a laminate: their geometric mean.
 *
 * $$E_{ac} = \sqrt{E_a E_c}$$
 *
 * @param input.hoopModulus   E_c [Pa], > 0
 * @param input.axialModulus  E_a [Pa], > 0
 * @returns modulus [Pa]
 * @throws CalculationError `invalid-input`
 * @see ISO 24817:2017, 7.5.7; ASME PCC-2, Eq. 12, as recalled
 */
export function meanModulus(input: MeanModulusInput): Modulus {
  const { hoopModulus: Ec, axialModulus: Ea } = input;
  positive(Ec, 'hoopModulus', 'Pa');
  positive(Ea, 'axialModulus', 'Pa');
  const modulus = Math.sqrt(Ea * Ec);
  finite(modulus, 'mean modulus', 'Pa');
  return modulus as Modulus;
}

export const meanModulusFormula = /* @__PURE__ */ formula<MeanModulusInput, Modulus>({
  id: 'laminate/mean-modulus',
  title: 'Geometric mean of hoop and axial modulus',
  compute: meanModulus,
  equation: { expression: 'sqrt(E_a * E_c)' },
  inputs: {
    hoopModulus: { symbol: 'E_c', kind: 'modulus', name: 'hoop modulus of the laminate', sample: [8e9, 80e9] },
    axialModulus: { symbol: 'E_a', kind: 'modulus', name: 'axial modulus of the laminate', sample: [4e9, 40e9] },
  },
  output: { symbol: 'E_ac', kind: 'modulus', name: 'mean modulus' },
  sources: [
    { key: 'iso-24817', locator: '7.5.7, as recalled' },
    { key: 'asme-pcc-2', locator: '401-3.4, Eq. 12, as recalled' },
  ],
  evidence: { form: { tag: 'recalled' } },
  limits: [],
});

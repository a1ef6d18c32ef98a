import { finite, formula, positive } from '../../formula/index.js';
import type { Modulus } from '../../quantity/index.js';
import { plateModulus } from '../hole/plate-modulus.js';

export interface StripModulusInput {
  readonly bridgingModulus: Modulus;
  readonly hoopModulus: Modulus;
  readonly axialModulus: Modulus;
  readonly poissonRatio: number;
}

/**
 * Modulus with which a laminate bends as a long strip that bridges a slot: that of the direction across the slot, held
 * straight along it.
 *
 * $$E' = \frac{E_b}{1 - \nu^2}, \qquad \nu^2 = \nu_{ca}^2 \frac{E_a}{E_c}$$
 *
 * @param input.bridgingModulus  E_b: E_a over a slot round the pipe, E_c over one along it [Pa], > 0
 * @param input.hoopModulus      E_c [Pa], > 0
 * @param input.axialModulus     E_a [Pa], > 0
 * @param input.poissonRatio     nu_ca, loaded along the hoop, contracting along the pipe, 0 to 1
 * @returns modulus of the strip [Pa]
 * @throws CalculationError `invalid-input`, also when nu^2 reaches 1, which no laminate can have
 * @remarks The recollections take sqrt(E_a E_c) over a slot round the pipe, as over a hole; but a long strip bends one way
 *   only, and there the softer modulus along the pipe is all it has.
 */
export function stripModulus(input: StripModulusInput): Modulus {
  const { bridgingModulus: Eb, hoopModulus: Ec, axialModulus: Ea, poissonRatio: nu } = input;
  positive(Eb, 'bridgingModulus', 'Pa');
  plateModulus(input);
  const modulus = Eb / (1 - (nu * nu * Ea) / Ec);
  finite(modulus, 'modulus of the strip', 'Pa');
  return modulus as Modulus;
}

export const stripModulusFormula = /* @__PURE__ */ formula<StripModulusInput, Modulus>({
  id: 'laminate/strip-modulus',
  title: 'Modulus of a strip over a slot',
  compute: stripModulus,
  equation: {
    where: [{ symbol: 'nu_2', kind: 'number', expression: 'nu_ca^2 * E_a / E_c' }],
    expression: 'E_b / (1 - nu_2)',
  },
  inputs: {
    bridgingModulus: { symbol: 'E_b', kind: 'modulus', name: 'modulus across the slot', sample: [4e9, 80e9] },
    hoopModulus: { symbol: 'E_c', kind: 'modulus', name: 'hoop modulus of the laminate', sample: [8e9, 80e9] },
    axialModulus: { symbol: 'E_a', kind: 'modulus', name: 'axial modulus of the laminate', sample: [4e9, 40e9] },
    poissonRatio: { symbol: 'nu_ca', kind: 'number', name: "Poisson's ratio, hoop to axial", sample: [0, 0.4] },
  },
  output: { symbol: 'E_p', kind: 'modulus', name: 'modulus of the strip' },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'cylindrical bending, and finite elements in plane strain' } },
  limits: [],
});

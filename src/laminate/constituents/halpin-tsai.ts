import { finite, formula, positive, properFraction } from '../../formula/index.js';
import type { Modulus } from '../../quantity/index.js';

export interface HalpinTsaiInput {
  readonly fibreModulus: Modulus;
  readonly matrixModulus: Modulus;
  readonly fibreVolumeFraction: number;
  readonly shape: number;
}

/**
 * Modulus of a ply across its fibres, or in shear (Halpin and Tsai).
 *
 * $$P = P_m \frac{1 + \xi \eta V_f}{1 - \eta V_f},\qquad \eta = \frac{P_f/P_m - 1}{P_f/P_m + \xi}$$
 *
 * @param input.fibreModulus         P_f [Pa], > 0
 * @param input.matrixModulus        P_m [Pa], > 0
 * @param input.fibreVolumeFraction  V_f, from 0 up to, not including, 1
 * @param input.shape                xi, 2 for the modulus across round fibres, 1 in shear, > 0
 * @returns modulus [Pa]
 * @throws CalculationError `invalid-input`
 * @see Kaw, Mechanics of Composite Materials, chapter 3, as recalled; with xi = 1 Voyiadjis and Kattan
 */
export function halpinTsai(input: HalpinTsaiInput): Modulus {
  const { fibreModulus: Pf, matrixModulus: Pm, fibreVolumeFraction: V, shape: xi } = input;
  positive(Pf, 'fibreModulus', 'Pa');
  positive(Pm, 'matrixModulus', 'Pa');
  properFraction(V, 'fibreVolumeFraction');
  positive(xi, 'shape', '');
  const eta = (Pf - Pm) / (Pf + xi * Pm);
  const result = (Pm * (1 + xi * eta * V)) / (1 - eta * V);
  finite(result, 'modulus across the fibres, or in shear', 'Pa');
  return result as Modulus;
}

export const halpinTsaiFormula = /* @__PURE__ */ formula<HalpinTsaiInput, Modulus>({
  id: 'laminate/halpin-tsai',
  title: 'Modulus across the fibres, Halpin and Tsai',
  search: ['micromechanics', 'transverse modulus'],
  compute: halpinTsai,
  equation: {
    where: [{ symbol: 'eta', kind: 'number', expression: '(P_f / P_m - 1) / (P_f / P_m + xi)' }],
    expression: 'P_m * (1 + xi * eta * V_f) / (1 - eta * V_f)',
  },
  inputs: {
    fibreModulus: {
      symbol: 'P_f',
      kind: 'modulus',
      name: 'modulus of the fibre across it, or in shear',
      sample: [10e9, 90e9],
    },
    matrixModulus: { symbol: 'P_m', kind: 'modulus', name: 'the same modulus of the matrix', sample: [1e9, 4e9] },
    fibreVolumeFraction: { symbol: 'V_f', kind: 'number', name: 'fibre volume fraction', sample: [0.2, 0.7] },
    shape: { symbol: 'xi', kind: 'number', name: 'shape of the reinforcement', sample: [0.5, 4] },
  },
  output: { symbol: 'P', kind: 'modulus', name: 'modulus across the fibres, or in shear' },
  sources: [{ key: 'kaw-as-recalled', locator: 'chapter 3' }],
  evidence: {
    form: {
      tag: 'recalled',
      derived: 'the bounds: the inverse rule for xi near 0, the rule of mixtures for xi without limit',
    },
  },
  limits: [],
});

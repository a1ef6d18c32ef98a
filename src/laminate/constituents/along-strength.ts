import { finite, formula, positive, properFraction, within } from '../../formula/index.js';
import type { Modulus, Stress } from '../../quantity/index.js';

export interface AlongStrengthInput {
  readonly fibreStrength: Stress;
  readonly fibreModulus: Modulus;
  readonly matrixModulus: Modulus;
  readonly fibreVolumeFraction: number;
  readonly voidFraction: number;
}

/**
 * Tensile strength of a ply along its fibres: it fails at the strain of the fibre.
 *
 * $$X = S_f \left(V_f + (1 - V_f - V_v) \frac{E_m}{E_f}\right)$$
 *
 * @param input.fibreStrength        S_f [Pa], > 0
 * @param input.fibreModulus         E_f [Pa], > 0
 * @param input.matrixModulus        E_m [Pa], > 0
 * @param input.fibreVolumeFraction  V_f, from 0 up to, not including, 1
 * @param input.voidFraction         V_v, from 0 up to 1 - V_f
 * @returns strength [Pa]
 * @throws CalculationError `invalid-input`
 * @remarks The strength of fibre as it was drawn is never reached in a laminate made by hand: an upper bound, for no design.
 * @see Murthy and Chamis, NASA TP-2515, 1986
 */
export function alongStrength(input: AlongStrengthInput): Stress {
  const { fibreStrength: Sf, fibreModulus: Ef, matrixModulus: Em, fibreVolumeFraction: V, voidFraction: Vv } = input;
  positive(Sf, 'fibreStrength', 'Pa');
  positive(Ef, 'fibreModulus', 'Pa');
  positive(Em, 'matrixModulus', 'Pa');
  properFraction(V, 'fibreVolumeFraction');
  properFraction(Vv, 'voidFraction');
  within(V + Vv, 0, 1, 'fibreVolumeFraction + voidFraction', '');
  const result = Sf * (V + (1 - V - Vv) * (Em / Ef));
  finite(result, 'strength along the fibres', 'Pa');
  return result as Stress;
}

export const alongStrengthFormula = /* @__PURE__ */ formula<AlongStrengthInput, Stress>({
  id: 'laminate/along-strength',
  title: 'Tensile strength along the fibres',
  search: ['fibre strength'],
  compute: alongStrength,
  equation: { expression: 'S_f * (V_f + (1 - V_f - V_v) * E_m / E_f)' },
  inputs: {
    fibreStrength: { symbol: 'S_f', kind: 'stress', name: 'strength of the fibre', sample: [1e9, 4e9] },
    fibreModulus: { symbol: 'E_f', kind: 'modulus', name: 'modulus of the fibre along it', sample: [70e9, 240e9] },
    matrixModulus: { symbol: 'E_m', kind: 'modulus', name: 'modulus of the matrix', sample: [2e9, 4e9] },
    fibreVolumeFraction: { symbol: 'V_f', kind: 'number', name: 'fibre volume fraction', sample: [0.2, 0.7] },
    voidFraction: { symbol: 'V_v', kind: 'number', name: 'void fraction', sample: [0, 0.05] },
  },
  output: { symbol: 'X', kind: 'stress', name: 'strength along the fibres' },
  sources: [{ key: 'nasa-tp-2515', locator: 'sample output' }],
  evidence: {
    form: { tag: 'secondary', derived: 'stress of fibre and matrix at the strain at which the fibre fails' },
  },
  limits: [],
});

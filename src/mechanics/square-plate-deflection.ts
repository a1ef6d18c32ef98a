import { finite, formula, nonNegative, positive, within } from '../formula/index.js';
import type { GaugePressure, Length, Modulus } from '../quantity/index.js';

export interface SquarePlateDeflectionInput {
  readonly pressure: GaugePressure;
  readonly side: Length;
  readonly thickness: Length;
  readonly modulus: Modulus;
  readonly poissonRatio: number;
}

/**
 * Deflection in the middle of a square plate that is clamped all round, under pressure.
 *
 * $$w_0 = 0.00126\,\frac{p a^4}{D},\qquad D = \frac{E t^3}{12 (1 - \nu^2)}$$
 *
 * @param input.pressure      p [Pa], >= 0
 * @param input.side          a [m], > 0
 * @param input.thickness     t [m], > 0
 * @param input.modulus       E [Pa], > 0
 * @param input.poissonRatio  nu, from 0 to 0.5
 * @returns deflection [m]
 * @throws CalculationError `invalid-input`
 * @remarks Thin, and deflected by less than half its thickness: beyond that the plate stretches and is stiffer. A laminate over a
 *   square opening; the round one is in the equation of the hole.
 * @see Timoshenko, plates under uniform pressure, as a verification page quotes it (NAFEMS R0015)
 */
export function squarePlateDeflection(input: SquarePlateDeflectionInput): Length {
  const { pressure: p, side: a, thickness: t, modulus: E, poissonRatio: nu } = input;
  nonNegative(p, 'pressure', 'Pa');
  positive(a, 'side', 'm');
  positive(t, 'thickness', 'm');
  positive(E, 'modulus', 'Pa');
  within(nu, 0, 0.5, 'poissonRatio', '');
  const x = a / t;
  const deflection = 0.00126 * 12 * (1 - nu * nu) * (p / E) * x * x * x * a;
  finite(deflection, 'deflection', 'm');
  return deflection as Length;
}

export const squarePlateDeflectionFormula = /* @__PURE__ */ formula<SquarePlateDeflectionInput, Length>({
  id: 'mechanics/square-plate-deflection',
  title: 'Deflection of a clamped square plate',
  search: ['flat plate', 'patch deflection'],
  compute: squarePlateDeflection,
  equation: { expression: '0.00126 * p * a^4 * 12 * (1 - nu^2) / (E * t^3)' },
  inputs: {
    pressure: { symbol: 'p', kind: 'gauge pressure', name: 'pressure', sample: [1e3, 1e6] },
    side: { symbol: 'a', kind: 'length', name: 'side of the plate', sample: [0.05, 1] },
    thickness: { symbol: 't', kind: 'length', name: 'thickness', sample: [0.003, 0.03] },
    modulus: { symbol: 'E', kind: 'modulus', name: 'modulus', sample: [8e9, 210e9] },
    poissonRatio: { symbol: 'nu', kind: 'number', name: "Poisson's ratio", sample: [0, 0.4] },
  },
  output: { symbol: 'w_0', kind: 'length', name: 'deflection in the middle' },
  sources: [{ key: 'timoshenko', locator: 'square plate, clamped, as a verification page quotes it' }],
  evidence: { form: { tag: 'secondary', derived: 'least energy of a double row of cosines' } },
  limits: [],
});

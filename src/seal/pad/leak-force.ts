import { atMost, finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { Area, Force, GaugePressure } from '../../quantity/index.js';

/** Force on the wetted pad, the one to design for, and on the hole alone. */
export interface LeakForce {
  readonly onPad: Force;
  readonly onHole: Force;
}

export interface LeakForceInput {
  readonly pressure: GaugePressure;
  readonly holeArea: Area;
  readonly padArea: Area;
}

/**
 * Force with which a leak pushes on what closes it: on the pad, under which the fluid may creep, and on the hole
 * alone.
 *
 * $$F_p = p A_p, \qquad F_h = p A_h$$
 *
 * @param input.pressure p, pressure in the line [Pa], >= 0
 * @param input.holeArea A_h, area of the hole [m2], > 0
 * @param input.padArea A_p, area of the pad that may be wetted [m2], > 0, at least A_h
 * @returns force on the pad [N], to design the band for, and force on the hole alone [N]
 * @throws CalculationError `invalid-input`
 * @remarks A pad of three times the diameter of the hole may feel nine times the force on the hole. Nothing shows
 *   from outside how far the fluid has crept.
 * @see force balance, on public web pages
 */
export function leakForce(input: LeakForceInput): LeakForce {
  const { pressure: p, holeArea: Ah, padArea: Ap } = input;
  nonNegative(p, 'pressure', 'Pa');
  positive(Ah, 'holeArea', 'm2');
  positive(Ap, 'padArea', 'm2');
  atMost(Ah, Ap, 'the area of the pad', 'holeArea', 'm2');
  const onPad = p * Ap;
  finite(onPad, 'force', 'N');
  return { onPad: onPad as Force, onHole: (p * Ah) as Force };
}

export const leakForceFormula = /* @__PURE__ */ formula<LeakForceInput, LeakForce>({
  id: 'seal/leak-force',
  title: 'Force of a leak on its plug and on its pad',
  search: ['putty', 'patch', 'leak clamp'],
  compute: leakForce,
  equation: { expression: 'p * A_p' },
  inputs: {
    pressure: { symbol: 'p', kind: 'gauge pressure', name: 'pressure in the line', sample: [0, 10e6] },
    holeArea: { symbol: 'A_h', kind: 'area', name: 'area of the hole', sample: [1e-6, 0.001] },
    padArea: { symbol: 'A_p', kind: 'area', name: 'area of the pad that may be wetted', sample: [8e-4, 0.03] },
  },
  output: {
    onPad: { symbol: 'F_p', kind: 'force', name: 'force on the wetted pad' },
    onHole: { symbol: 'F_h', kind: 'force', name: 'force on the hole alone' },
  },
  sources: [{ key: 'web-seal-examples', locator: 'force balance on a plug' }],
  evidence: { form: { tag: 'secondary', derived: 'pressure times area; the wetted pad is the safe reading' } },
  limits: [],
});

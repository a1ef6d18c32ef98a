import { formula } from '../../formula/index.js';
import type { BendingStiffness, CouplingStiffness, ExtensionalStiffness, Length } from '../../quantity/index.js';
import { plies } from './declared-inputs.js';
import { plateOf } from './plate.js';
import { allFinite, checkPlies, type Ply } from './ply.js';

export interface LaminateStiffnessInput {
  readonly plies: readonly Ply[];
}

/** A, B and D of a laminate. */
export interface LaminateStiffness {
  readonly a11: ExtensionalStiffness;
  readonly a12: ExtensionalStiffness;
  readonly a22: ExtensionalStiffness;
  readonly a16: ExtensionalStiffness;
  readonly a26: ExtensionalStiffness;
  readonly a66: ExtensionalStiffness;
  readonly b11: CouplingStiffness;
  readonly b12: CouplingStiffness;
  readonly b22: CouplingStiffness;
  readonly b16: CouplingStiffness;
  readonly b26: CouplingStiffness;
  readonly b66: CouplingStiffness;
  readonly d11: BendingStiffness;
  readonly d12: BendingStiffness;
  readonly d22: BendingStiffness;
  readonly d16: BendingStiffness;
  readonly d26: BendingStiffness;
  readonly d66: BendingStiffness;
  readonly thickness: Length;
}

/**
 * Stiffness of a laminate by classical lamination theory.
 *
 * $$A = \sum \bar Q t,\qquad B = \sum \bar Q t z,\qquad D = \sum \bar Q \left(t z^2 + \frac{t^3}{12}\right)$$
 *
 * @param input.plies  from z = -h/2 upward: thickness [m], angle from x to the fibres [rad], E_1, E_2, G_12 [Pa], nu_12
 * @returns the entries of A [N/m], B [N] and D [N m], and the thickness [m]
 * @throws CalculationError `invalid-input`
 * @remarks z is counted from the mid-plane towards the last ply; counted the other way B changes its sign.
 * @see Nettles, NASA RP-1351, 1994, Eq. 53 to 56
 */
export function laminateStiffness({ plies: rows }: LaminateStiffnessInput): LaminateStiffness {
  checkPlies(rows);
  const { A, B, D, thickness } = plateOf(rows);
  allFinite([...A, ...B, ...D, thickness], 'stiffness', '');
  return {
    a11: A[0] as ExtensionalStiffness,
    a12: A[1] as ExtensionalStiffness,
    a22: A[2] as ExtensionalStiffness,
    a16: A[3] as ExtensionalStiffness,
    a26: A[4] as ExtensionalStiffness,
    a66: A[5] as ExtensionalStiffness,
    b11: B[0] as CouplingStiffness,
    b12: B[1] as CouplingStiffness,
    b22: B[2] as CouplingStiffness,
    b16: B[3] as CouplingStiffness,
    b26: B[4] as CouplingStiffness,
    b66: B[5] as CouplingStiffness,
    d11: D[0] as BendingStiffness,
    d12: D[1] as BendingStiffness,
    d22: D[2] as BendingStiffness,
    d16: D[3] as BendingStiffness,
    d26: D[4] as BendingStiffness,
    d66: D[5] as BendingStiffness,
    thickness: thickness as Length,
  };
}

export const laminateStiffnessFormula = /* @__PURE__ */ formula<LaminateStiffnessInput, LaminateStiffness>({
  id: 'laminate/laminate-stiffness',
  title: 'Stiffness of a laminate',
  search: ['abd matrix', 'clt', 'laminate theory'],
  compute: laminateStiffness,
  equation: {
    algorithm:
      'sums over the plies of the turned stiffness times t, times t z, and times t z^2 + t^3/12, z from the mid-plane',
  },
  inputs: { plies },
  output: {
    a11: { symbol: 'A_11', kind: 'extensional stiffness', name: 'stiffness along x' },
    a12: { symbol: 'A_12', kind: 'extensional stiffness', name: 'stiffness that couples x and y' },
    a22: { symbol: 'A_22', kind: 'extensional stiffness', name: 'stiffness along y' },
    a16: { symbol: 'A_16', kind: 'extensional stiffness', name: 'stiffness that couples x and shear' },
    a26: { symbol: 'A_26', kind: 'extensional stiffness', name: 'stiffness that couples y and shear' },
    a66: { symbol: 'A_66', kind: 'extensional stiffness', name: 'stiffness in shear' },
    b11: { symbol: 'B_11', kind: 'coupling stiffness', name: 'coupling of pull and bending along x' },
    b12: { symbol: 'B_12', kind: 'coupling stiffness', name: 'coupling of pull along x and bending along y' },
    b22: { symbol: 'B_22', kind: 'coupling stiffness', name: 'coupling of pull and bending along y' },
    b16: { symbol: 'B_16', kind: 'coupling stiffness', name: 'coupling of pull along x and twist' },
    b26: { symbol: 'B_26', kind: 'coupling stiffness', name: 'coupling of pull along y and twist' },
    b66: { symbol: 'B_66', kind: 'coupling stiffness', name: 'coupling of shear and twist' },
    d11: { symbol: 'D_11', kind: 'bending stiffness', name: 'bending stiffness along x' },
    d12: { symbol: 'D_12', kind: 'bending stiffness', name: 'bending stiffness that couples x and y' },
    d22: { symbol: 'D_22', kind: 'bending stiffness', name: 'bending stiffness along y' },
    d16: { symbol: 'D_16', kind: 'bending stiffness', name: 'coupling of bending along x and twist' },
    d26: { symbol: 'D_26', kind: 'bending stiffness', name: 'coupling of bending along y and twist' },
    d66: { symbol: 'D_66', kind: 'bending stiffness', name: 'stiffness in twist' },
    thickness: { symbol: 'h', kind: 'length', name: 'thickness' },
  },
  sources: [{ key: 'nasa-rp-1351', locator: 'Eq. 53 to 56' }],
  evidence: { form: { tag: 'secondary', derived: 'stiffness integrated through the thickness' } },
  limits: [],
});

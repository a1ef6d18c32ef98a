import { finite, formula, nonNegative, oneOf, positive } from '../../formula/index.js';
import type { Force, Length, Moment } from '../../quantity/index.js';

const edges = ['pulled', 'pushed'] as const;

/** The outermost fibre of a bent pipe on its long side or on its short side. */
export type BentEdge = (typeof edges)[number];

export interface ForceAtEdgeInput {
  readonly axialForce: Force;
  readonly bendingMoment: Moment;
  readonly outsideDiameter: Length;
  readonly edge: BentEdge;
}

/**
 * Axial force that strains the whole ring as an axial force and a bending moment strain its outermost fibre.
 *
 * $$F_e = F_{ax} \pm \frac{4 M_{ax}}{D}$$
 *
 * @param input.axialForce       F_ax, along the pipe beside that of the pressure [N]; a pull above 0, a push below
 * @param input.bendingMoment    M_ax, size of the bending moment [N m], >= 0
 * @param input.outsideDiameter  D [m], > 0
 * @param input.edge             'pulled', where the moment adds, or 'pushed', where it takes off
 * @returns axial force [N]
 * @throws CalculationError `invalid-input`
 * @remarks A push bulges the laminate and adds to its hoop strain; a bent pipe has a pushed side whatever the force is.
 */
export function forceAtEdge(input: ForceAtEdgeInput): Force {
  const { axialForce: F, bendingMoment: M, outsideDiameter: D, edge } = input;
  finite(F, 'axialForce', 'N');
  nonNegative(M, 'bendingMoment', 'N m');
  positive(D, 'outsideDiameter', 'm');
  oneOf(edge, edges, 'edge');
  const force = edge === 'pulled' ? F + (4 * M) / D : F - (4 * M) / D;
  finite(force, 'force at the edge', 'N');
  return force as Force;
}

export const forceAtEdgeFormula = /* @__PURE__ */ formula<ForceAtEdgeInput, Force>({
  id: 'laminate/force-at-edge',
  title: 'Axial force at the edge of a bent pipe',
  compute: forceAtEdge,
  equation: {
    branches: [{ when: 'edge == "pulled"', expression: 'F_ax + 4 * M_ax / D' }, { expression: 'F_ax - 4 * M_ax / D' }],
  },
  inputs: {
    axialForce: { symbol: 'F_ax', kind: 'force', name: 'stated axial force', sample: [-1e6, 1e6] },
    bendingMoment: { symbol: 'M_ax', kind: 'moment', name: 'bending moment', sample: [0, 1e5] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.0213, 1.2] },
    edge: { symbol: 'edge', kind: 'choice', name: 'side of the bent pipe', choices: ['pulled', 'pushed'] },
  },
  output: { symbol: 'F_e', kind: 'force', name: 'axial force at the edge' },
  sources: [],
  evidence: { form: { tag: 'practice', derived: 'first moment of a thin ring, F = 4 M / D' } },
  limits: [],
});

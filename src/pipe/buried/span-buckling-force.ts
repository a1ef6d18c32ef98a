import { below, finite, formula, positive, within } from '../../formula/index.js';
import type { Force, Length, Modulus } from '../../quantity/index.js';

export interface SpanBucklingForceInput {
  readonly span: Length;
  readonly outsideDiameter: Length;
  readonly wallThickness: Length;
  readonly modulus: Modulus;
  readonly factor?: number;
}

/**
 * Push that a free span of pipe bears before it buckles as a column between two hinges (Euler), with its factor.
 *
 * $$F_b = \frac{\pi^2 E I}{f L^2}, \qquad I = \frac{\pi}{64} \left(D^4 - (D - 2 t)^4\right)$$
 *
 * @param input.span             L, between supports [m], > 0
 * @param input.outsideDiameter  D [m], > 0
 * @param input.wallThickness    t, least wall, taken all round and along the span [m], > 0 and < D/2
 * @param input.modulus          E, of the pipe [Pa], > 0
 * @param input.factor           f, on the buckling force, 1 to 100; 3 unless given
 * @returns push [N]
 * @throws CalculationError `invalid-input`
 * @remarks The laminate, the hold of the supports and a pull of the pressure earn no credit. A short span yields before it
 *   buckles: the stress of the push is a check of its own.
 * @see Euler; own derivation by the energy of a half sine
 */
export function spanBucklingForce(input: SpanBucklingForceInput): Force {
  const { span: L, outsideDiameter: D, wallThickness: t, modulus: E, factor: f = 3 } = input;
  positive(L, 'span', 'm');
  positive(D, 'outsideDiameter', 'm');
  positive(t, 'wallThickness', 'm');
  below(t, D / 2, 'half the outside diameter', 'wallThickness', 'm');
  positive(E, 'modulus', 'Pa');
  within(f, 1, 100, 'factor', '');
  const d = D - 2 * t;
  const I = (Math.PI * t * (D - t) * (D * D + d * d)) / 16;
  const force = (Math.PI * Math.PI * E * I) / (f * L * L);
  finite(force, 'buckling force', 'N');
  return force as Force;
}

export const spanBucklingForceFormula = /* @__PURE__ */ formula<SpanBucklingForceInput, Force>({
  id: 'pipe/span-buckling-force',
  title: 'Push that a free span bears',
  search: ['column buckling', 'euler'],
  compute: spanBucklingForce,
  equation: {
    where: [
      { symbol: 'd_i', kind: 'length', expression: 'D - 2 * t' },
      { symbol: 'A_I', kind: 'area', expression: 'pi * t * (D - t) / 16' },
    ],
    expression: 'pi^2 * E * A_I * (D^2 + d_i^2) / (f * L^2)',
  },
  inputs: {
    span: { symbol: 'L', kind: 'length', name: 'free span', sample: [1, 40] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.0213, 1.2] },
    wallThickness: { symbol: 't', kind: 'length', name: 'least wall', sample: [0.001, 0.04] },
    modulus: { symbol: 'E', kind: 'modulus', name: 'modulus of the pipe', sample: [60e9, 220e9] },
    factor: { symbol: 'f', kind: 'number', name: 'factor on the buckling force', sample: [1, 5], default: 3 },
  },
  output: { symbol: 'F_b', kind: 'force', name: 'push that the span bears' },
  sources: [],
  evidence: {
    form: { tag: 'practice', derived: 'energy of a half sine between hinges' },
    'factor 3': { tag: 'chosen' },
  },
  limits: [],
});

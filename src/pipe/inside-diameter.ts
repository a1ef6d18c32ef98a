import { below, formula, positive } from '../formula/index.js';
import type { Length } from '../quantity/index.js';

export interface InsideDiameterInput {
  readonly outsideDiameter: Length;
  readonly wallThickness: Length;
}

/**
 * Inside diameter of a pipe.
 *
 * $$d = D - 2 t$$
 *
 * @param input.outsideDiameter D [m], > 0
 * @param input.wallThickness   t [m], > 0 and < D/2
 * @returns inside diameter [m]
 * @throws CalculationError `invalid-input`
 * @see geometry of the circle
 */
export function insideDiameter(input: InsideDiameterInput): Length {
  const { outsideDiameter: D, wallThickness: t } = input;
  positive(D, 'outsideDiameter', 'm');
  positive(t, 'wallThickness', 'm');
  below(t, D / 2, 'half the outside diameter', 'wallThickness', 'm');
  return (D - 2 * t) as Length;
}

export const insideDiameterFormula = /* @__PURE__ */ formula<InsideDiameterInput, Length>({
  id: 'pipe/inside-diameter',
  title: 'Inside diameter',
  search: ['bore'],
  compute: insideDiameter,
  equation: { expression: 'D - 2 * t' },
  inputs: {
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.06, 1.2] },
    wallThickness: { symbol: 't', kind: 'length', name: 'wall thickness', sample: [0.002, 0.025] },
  },
  output: { symbol: 'd', kind: 'length', name: 'inside diameter' },
  sources: [],
  evidence: { form: { tag: 'practice' } },
  limits: [],
});

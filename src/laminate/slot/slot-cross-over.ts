import { finite, formula, positive } from '../../formula/index.js';
import type { Length, Modulus } from '../../quantity/index.js';

export interface SlotCrossOverInput {
  readonly outsideDiameter: Length;
  readonly laminateThickness: Length;
  readonly hoopModulus: Modulus;
  readonly stripModulus: Modulus;
  readonly overshoot?: number;
}

/**
 * Width of a slot at which the bending of a flat strip releases as much as the ring of the laminate: beyond it the ring
 * holds the laminate back.
 *
 * $$W = \left(3 b \frac{E'}{E_c}\right)^{1/4} \sqrt{D t}$$
 *
 * @param input.outsideDiameter    D [m], > 0
 * @param input.laminateThickness  t [m], > 0
 * @param input.hoopModulus        E_c [Pa], > 0
 * @param input.stripModulus       E', of `stripModulus` in the direction of the width [Pa], > 0
 * @param input.overshoot          b, release of a curved strip over that of its membrane, 1.6 unless given
 * @returns width [m]
 * @throws CalculationError `invalid-input`
 * @remarks With b = 1 and a laminate alike in both directions, (3/(1 - nu^2))^(1/4) sqrt(D t). For information: the
 *   resistance is the larger one of `slotResistance` and `wideSlotResistance` on either side of it.
 */
export function slotCrossOver(input: SlotCrossOverInput): Length {
  const { outsideDiameter: D, laminateThickness: t, hoopModulus: Ec, stripModulus: Ep, overshoot: b = 1.6 } = input;
  positive(D, 'outsideDiameter', 'm');
  positive(t, 'laminateThickness', 'm');
  positive(Ec, 'hoopModulus', 'Pa');
  positive(Ep, 'stripModulus', 'Pa');
  positive(b, 'overshoot', '');
  const width = Math.sqrt(Math.sqrt((3 * b * Ep) / Ec)) * Math.sqrt(D * t);
  finite(width, 'width', 'm');
  return width as Length;
}

export const slotCrossOverFormula = /* @__PURE__ */ formula<SlotCrossOverInput, Length>({
  id: 'laminate/slot-cross-over',
  title: 'Width of a slot beyond which the ring governs',
  compute: slotCrossOver,
  equation: { expression: 'sqrt(sqrt(3 * b * E_p / E_c)) * sqrt(D * t)' },
  inputs: {
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.0213, 1.2] },
    laminateThickness: { symbol: 't', kind: 'length', name: 'laminate thickness', sample: [0.002, 0.05] },
    hoopModulus: { symbol: 'E_c', kind: 'modulus', name: 'hoop modulus of the laminate', sample: [8e9, 80e9] },
    stripModulus: { symbol: 'E_p', kind: 'modulus', name: 'modulus of the strip', sample: [4e9, 90e9] },
    overshoot: {
      symbol: 'b',
      kind: 'number',
      name: 'release of the curved strip over that of its membrane',
      default: 1.6,
      sample: [1, 2],
    },
  },
  output: { symbol: 'W_x', kind: 'length', name: 'width at which both release alike' },
  sources: [],
  evidence: {
    form: { tag: 'chosen', derived: 'bending of the strip set equal to the ring' },
    overshoot: { tag: 'chosen', derived: 'clamped arc and clamped ring' },
  },
  limits: [],
});

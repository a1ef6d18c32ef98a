import { finite, formula, nonNegative, positive, within } from '../../formula/index.js';
import type { Force, GaugePressure, Length } from '../../quantity/index.js';

export interface RingMomentOfSoilInput {
  readonly soilPressure: GaugePressure;
  readonly outsideDiameter: Length;
  readonly growth?: number;
}

/**
 * Greatest bending moment, for each length along the pipe, in a ring that soil presses on from above and that lies on a
 * line, with nothing at its sides.
 *
 * $$m = k\, q D^2 \left(\frac{1}{6 \pi} + \frac{3}{32}\right)$$
 *
 * @param input.soilPressure     q, of soil and traffic on the top of the pipe [Pa], >= 0
 * @param input.outsideDiameter  D, of the ring [m], > 0
 * @param input.growth           k, growth of the moment as pressure from outside makes the ring more oval, 1 to 10; 1.5 unless given
 * @returns bending moment for each length [N], at the line that the pipe lies on
 * @throws CalculationError `invalid-input`
 * @remarks Soil beside the pipe holds it round and a bed spreads the load from below: neither is counted. A ring that
 *   bears a third of its buckling pressure grows 1/(1 - 1/3) as oval: k = 1.5 holds with the factor 3 on that pressure.
 * @see own derivation: inextensible ring, rotation and shift of the crown zero
 */
export function ringMomentOfSoil(input: RingMomentOfSoilInput): Force {
  const { soilPressure: q, outsideDiameter: D, growth: k = 1.5 } = input;
  nonNegative(q, 'soilPressure', 'Pa');
  positive(D, 'outsideDiameter', 'm');
  within(k, 1, 10, 'growth', '');
  const moment = k * q * D * D * (1 / (6 * Math.PI) + 3 / 32);
  finite(moment, 'bending moment of the ring', 'N');
  return moment as Force;
}

export const ringMomentOfSoilFormula = /* @__PURE__ */ formula<RingMomentOfSoilInput, Force>({
  id: 'laminate/ring-moment-of-soil',
  title: 'Bending of a ring under soil',
  search: ['buried', 'ovality', 'deflection'],
  compute: ringMomentOfSoil,
  equation: { expression: 'k * q * D^2 * (1 / (6 * pi) + 3 / 32)' },
  inputs: {
    soilPressure: { symbol: 'q', kind: 'gauge pressure', name: 'pressure of soil and traffic', sample: [0, 3e5] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter of the ring', sample: [0.0213, 1.2] },
    growth: { symbol: 'k', kind: 'number', name: 'growth by pressure from outside', sample: [1, 2], default: 1.5 },
  },
  output: { symbol: 'm', kind: 'force', name: 'bending moment for each length' },
  sources: [],
  evidence: {
    form: { tag: 'chosen', derived: 'moments of a ring cut at its crown, no rotation and no shift there' },
    'growth 1.5': { tag: 'chosen', derived: 'growth of an oval at a third of the buckling pressure' },
  },
  limits: [],
});

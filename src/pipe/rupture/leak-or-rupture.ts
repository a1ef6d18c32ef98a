import { formula, nonNegative } from '../../formula/index.js';
import type { GaugePressure } from '../../quantity/index.js';
import { type ThroughWallSlotInput, throughWallSlot } from './through-wall-slot.js';

export interface LeakOrRuptureInput extends ThroughWallSlotInput {
  readonly pressure: GaugePressure;
}

/**
 * Whether a slot through the wall, along the pipe, stays a leak at this pressure or tears open.
 *
 * $$\frac{P D}{2 t} < \frac{S_{flow}}{M}\ \text{: leak, else rupture}$$
 *
 * @param input.outsideDiameter  D [m], > 0
 * @param input.wallThickness    t [m], > 0 and < D/2
 * @param input.flowStress       S_flow [Pa], > 0
 * @param input.defectLength     L, along the pipe [m], > 0
 * @param input.pressure         P, internal gauge pressure [Pa], >= 0
 * @returns `leak` or `rupture`; `rupture` when the two stresses are equal
 * @throws CalculationError `invalid-input`
 * @remarks No margin is in it. For tough pipe: a brittle one tears earlier.
 * @see NG-18 through-wall flaw equation
 */
export function leakOrRupture(input: LeakOrRuptureInput): 'leak' | 'rupture' {
  const { outsideDiameter: D, wallThickness: t, pressure: P } = input;
  nonNegative(P, 'pressure', 'Pa');
  return P * (D / (2 * t)) < throughWallSlot(input) ? 'leak' : 'rupture';
}

export const leakOrRuptureFormula = /* @__PURE__ */ formula<LeakOrRuptureInput, 'leak' | 'rupture'>({
  id: 'pipe/leak-or-rupture',
  title: 'Leak or rupture of a through-wall slot',
  search: ['leak before break', 'burst'],
  compute: leakOrRupture,
  equation: { algorithm: 'leak while P D/(2 t) is below S_flow/M of the slot, else rupture' },
  inputs: {
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.1, 1.2] },
    wallThickness: { symbol: 't', kind: 'length', name: 'wall thickness', sample: [0.005, 0.03] },
    flowStress: { symbol: 'S_flow', kind: 'stress', name: 'flow stress', sample: [200e6, 700e6] },
    defectLength: { symbol: 'L', kind: 'length', name: 'length of the slot along the pipe', sample: [0.01, 1.2] },
    pressure: { symbol: 'P', kind: 'gauge pressure', name: 'internal pressure', sample: [0, 15e6] },
  },
  output: { symbol: 'behaviour', kind: 'choice', name: 'what the slot does' },
  sources: [{ key: 'kiefner-vieth-1989', locator: 'NG-18 through-wall flaw equation' }],
  evidence: { form: { tag: 'recalled' } },
  limits: [],
});

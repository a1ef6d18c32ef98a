import { atLeast, formula } from '../../formula/index.js';
import type { GaugePressure } from '../../quantity/index.js';
import { type ThroughWallSlotInput, throughWallSlot } from './through-wall-slot.js';

export interface ThroughWallSlotPressureInput extends ThroughWallSlotInput {
  readonly safetyFactor: number;
}

/**
 * Pressure at which a thinned length that is cut through stays a leak, with a safety factor.
 *
 * $$P = \frac{2 S_{flow} t}{D\,M(L)\,n}$$
 *
 * with M the three-term bulging factor of `foliasModifiedB31g`.
 *
 * @param input.outsideDiameter  D [m], > 0
 * @param input.wallThickness    t, least wall round the hole [m], > 0 and < D/2
 * @param input.flowStress       S_flow [Pa], > 0
 * @param input.defectLength     L, of the whole thinned metal along the pipe [m], > 0
 * @param input.safetyFactor     n, >= 1
 * @returns highest pressure [Pa]
 * @throws CalculationError `invalid-input`
 * @remarks For tough pipe: a brittle one tears earlier.
 * @see NG-18 through-wall flaw equation
 */
export function throughWallSlotPressure(input: ThroughWallSlotPressureInput): GaugePressure {
  const { outsideDiameter: D, wallThickness: t, safetyFactor: n } = input;
  atLeast(n, 1, 'no margin', 'safetyFactor', '');
  return (((2 * t) / D) * (throughWallSlot(input) / n)) as GaugePressure;
}

export const throughWallSlotPressureFormula = /* @__PURE__ */ formula<ThroughWallSlotPressureInput, GaugePressure>({
  id: 'pipe/through-wall-slot-pressure',
  title: 'Pressure at which a thinned length that is cut through stays a leak',
  search: ['leak before break', 'rupture'],
  compute: throughWallSlotPressure,
  equation: {
    where: [{ symbol: 'z', kind: 'number', expression: 'L^2 / (D * t)' }],
    branches: [
      { when: 'z <= 50', expression: '2 * t * S_flow / (D * n * sqrt(1 + 0.6275 * z - 0.003375 * z^2))' },
      { expression: '2 * t * S_flow / (D * n * (0.032 * z + 3.3))' },
    ],
  },
  inputs: {
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.1, 1.2] },
    wallThickness: { symbol: 't', kind: 'length', name: 'least wall round the hole', sample: [0.005, 0.03] },
    flowStress: { symbol: 'S_flow', kind: 'stress', name: 'flow stress', sample: [200e6, 700e6] },
    defectLength: {
      symbol: 'L',
      kind: 'length',
      name: 'length of the thinned metal along the pipe',
      sample: [0.01, 1.2],
    },
    safetyFactor: { symbol: 'n', kind: 'number', name: 'safety factor', sample: [1, 3] },
  },
  output: { symbol: 'P_leak', kind: 'gauge pressure', name: 'highest pressure' },
  sources: [{ key: 'kiefner-vieth-1989', locator: 'NG-18 through-wall flaw equation' }],
  evidence: { form: { tag: 'recalled' } },
  limits: [],
});

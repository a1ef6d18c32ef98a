import { finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { GaugePressure, Length, Stress } from '../../quantity/index.js';
import { checkPipeWall } from '../remaining-strength/part-wall-defect.js';

export interface B31g1991DesignPressureInput {
  readonly outsideDiameter: Length;
  readonly wallThickness: Length;
  readonly yieldStrength: Stress;
  readonly designFactor: number;
  readonly temperatureFactor?: number;
  readonly operatingPressure: GaugePressure;
}

/**
 * Pressure P of the 1991 manual: the design pressure of the sound pipe, or its established operating pressure if that is higher.
 *
 * $$P = \max\left(\frac{2 S_y t F T}{D},\ \mathrm{MAOP}\right)$$
 *
 * @param input.outsideDiameter    D [m], > 0
 * @param input.wallThickness      t [m], > 0 and < D/2
 * @param input.yieldStrength      S_y, specified minimum yield strength [Pa], > 0
 * @param input.designFactor       F, > 0
 * @param input.temperatureFactor  T, > 0; 1 by default
 * @param input.operatingPressure  MAOP, established maximum operating pressure [Pa], >= 0
 * @returns pressure P [Pa]
 * @throws CalculationError `invalid-input`
 * @see ASME B31G-1991, Part 4
 */
export function b31g1991DesignPressure(input: B31g1991DesignPressureInput): GaugePressure {
  const { outsideDiameter: D, wallThickness: t, yieldStrength: S, designFactor: F, temperatureFactor: T = 1 } = input;
  checkPipeWall(D, t);
  positive(S, 'yieldStrength', 'Pa');
  positive(F, 'designFactor', '');
  positive(T, 'temperatureFactor', '');
  nonNegative(input.operatingPressure, 'operatingPressure', 'Pa');
  const pressure = Math.max(S * ((2 * t) / D) * F * T, input.operatingPressure);
  finite(pressure, 'design pressure', 'Pa');
  return pressure as GaugePressure;
}

export const b31g1991DesignPressureFormula = /* @__PURE__ */ formula<B31g1991DesignPressureInput, GaugePressure>({
  id: 'pipe/b31g-1991-design-pressure',
  title: 'Pressure P of B31G-1991',
  compute: b31g1991DesignPressure,
  equation: { expression: 'max(2 * S_y * t * F * T / D, MAOP)' },
  inputs: {
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.1, 1.2] },
    wallThickness: { symbol: 't', kind: 'length', name: 'wall thickness', sample: [0.005, 0.03] },
    yieldStrength: { symbol: 'S_y', kind: 'stress', name: 'specified minimum yield strength', sample: [200e6, 560e6] },
    designFactor: { symbol: 'F', kind: 'number', name: 'design factor', sample: [0.4, 0.8] },
    temperatureFactor: { symbol: 'T', kind: 'number', name: 'temperature factor', sample: [0.86, 1], default: 1 },
    operatingPressure: {
      symbol: 'MAOP',
      kind: 'gauge pressure',
      name: 'established maximum operating pressure',
      sample: [1e6, 15e6],
    },
  },
  output: { symbol: 'P', kind: 'gauge pressure', name: 'pressure of the sound pipe' },
  sources: [{ key: 'asme-b31g-1991', locator: 'Part 4' }],
  evidence: { form: { tag: 'secondary' } },
  limits: [],
});

import { atMost, below, finite, formula, positive } from '../../formula/index.js';
import type { GaugePressure, Length, Stress } from '../../quantity/index.js';

export interface GasDesignPressureInput {
  readonly outsideDiameter: Length;
  readonly wallThickness: Length;
  readonly yieldStrength: Stress;
  readonly designFactor: number;
  readonly jointFactor: number;
  readonly temperatureFactor?: number | undefined;
  readonly heatFactor?: number | undefined;
}

/**
 * Design pressure of steel pipe in a gas pipeline.
 *
 *$$P = \frac{2 S t}{D} F E T k$$
 *
 * @param input.outsideDiameter    D [m], > 0
 * @param input.wallThickness      t, nominal wall [m], > 0 and < D/2
 * @param input.yieldStrength      S, specified minimum yield strength, or the value the rule allows where it is unknown [Pa], > 0
 * @param input.designFactor       F, above 0 and at most 1
 * @param input.jointFactor        E, above 0 and at most 1
 * @param input.temperatureFactor  T, above 0 and at most 1; 1 when left out (to 250 degF)
 * @param input.heatFactor         k, above 0 and at most 1; 1 when left out, 0.75 for pipe cold expanded and then heated, 192.105(b)
 * @returns design pressure [Pa]
 * @throws CalculationError `invalid-input`
 * @remarks The factors by class location, joint and temperature are look-ups of hoopwright/tables. The form of B31.8
 *   841.1.1 too.
 * @see 49 CFR 192.105
 */
export function gasDesignPressure(input: GasDesignPressureInput): GaugePressure {
  const { outsideDiameter: D, wallThickness: t, yieldStrength: S, designFactor: F, jointFactor: E } = input;
  const { temperatureFactor: T = 1, heatFactor: k = 1 } = input;
  positive(D, 'outsideDiameter', 'm');
  positive(t, 'wallThickness', 'm');
  below(t, D / 2, 'half the outside diameter', 'wallThickness', 'm');
  positive(S, 'yieldStrength', 'Pa');
  positive(F, 'designFactor', '');
  atMost(F, 1, 'full strength', 'designFactor', '');
  positive(E, 'jointFactor', '');
  atMost(E, 1, 'full strength', 'jointFactor', '');
  positive(T, 'temperatureFactor', '');
  atMost(T, 1, 'no derating', 'temperatureFactor', '');
  positive(k, 'heatFactor', '');
  atMost(k, 1, 'pipe that was not heated', 'heatFactor', '');
  const P = ((2 * S * t) / D) * F * E * T * k;
  finite(P, 'design pressure', 'Pa');
  return P as GaugePressure;
}

export const gasDesignPressureFormula = /* @__PURE__ */ formula<GasDesignPressureInput, GaugePressure>({
  id: 'pipe/gas-design-pressure',
  title: 'Design pressure of a gas pipeline',
  search: ['maop', 'location class', 'design factor'],
  compute: gasDesignPressure,
  equation: { expression: '2 * S * t / D * F * E * T * k' },
  inputs: {
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.0213, 1.2] },
    wallThickness: { symbol: 't', kind: 'length', name: 'nominal wall', sample: [0.001, 0.04] },
    yieldStrength: { symbol: 'S', kind: 'stress', name: 'yield strength', sample: [170e6, 555e6] },
    designFactor: { symbol: 'F', kind: 'number', name: 'design factor', sample: [0.4, 0.8] },
    jointFactor: { symbol: 'E', kind: 'number', name: 'longitudinal joint factor', sample: [0.6, 1] },
    temperatureFactor: {
      symbol: 'T',
      kind: 'number',
      name: 'temperature derating factor',
      sample: [0.8, 1],
      default: 1,
    },
    heatFactor: {
      symbol: 'k',
      kind: 'number',
      name: 'factor for heated cold-expanded pipe',
      sample: [0.75, 1],
      default: 1,
    },
  },
  output: { symbol: 'P_d', kind: 'gauge pressure', name: 'design pressure' },
  sources: [
    { key: 'cfr-49-192', locator: '192.105' },
    { key: 'asme-b31-8', locator: '841.1.1' },
    { key: 'rules-of-thumb', locator: 'p. 84' },
  ],
  evidence: {
    form: { tag: 'published', derived: 'hoop stress on the outside diameter at F E T S' },
    temperatureFactor: { tag: 'published' },
    heatFactor: { tag: 'published' },
  },
  limits: [],
});

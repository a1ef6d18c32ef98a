import { atMost, below, finite, formula, positive } from '../../formula/index.js';
import type { GaugePressure, Length, Stress } from '../../quantity/index.js';

export interface LiquidDesignPressureInput {
  readonly outsideDiameter: Length;
  readonly wallThickness: Length;
  readonly yieldStrength: Stress;
  readonly designFactor: number;
  readonly jointFactor: number;
}

/**
 * Internal design pressure of steel pipe in a hazardous-liquid pipeline.
 *
 *$$P = \frac{2 S t}{D} E F$$
 *
 * @param input.outsideDiameter  D [m], > 0
 * @param input.wallThickness    t, nominal wall [m], > 0 and < D/2
 * @param input.yieldStrength    S, specified minimum yield strength, or the value the rule allows where it is unknown [Pa], > 0
 * @param input.designFactor     F, above 0 and at most 1
 * @param input.jointFactor      E, above 0 and at most 1
 * @returns internal design pressure [Pa]
 * @throws CalculationError `invalid-input`
 * @remarks The factors are look-ups of hoopwright/tables. The form of B31.4 403.2 too, with S = 0.72 E SMYS.
 * @see 49 CFR 195.106(a)
 */
export function liquidDesignPressure(input: LiquidDesignPressureInput): GaugePressure {
  const { outsideDiameter: D, wallThickness: t, yieldStrength: S, designFactor: F, jointFactor: E } = input;
  positive(D, 'outsideDiameter', 'm');
  positive(t, 'wallThickness', 'm');
  below(t, D / 2, 'half the outside diameter', 'wallThickness', 'm');
  positive(S, 'yieldStrength', 'Pa');
  positive(F, 'designFactor', '');
  atMost(F, 1, 'full strength', 'designFactor', '');
  positive(E, 'jointFactor', '');
  atMost(E, 1, 'full strength', 'jointFactor', '');
  const P = ((2 * S * t) / D) * E * F;
  finite(P, 'design pressure', 'Pa');
  return P as GaugePressure;
}

export const liquidDesignPressureFormula = /* @__PURE__ */ formula<LiquidDesignPressureInput, GaugePressure>({
  id: 'pipe/liquid-design-pressure',
  title: 'Design pressure of a liquid pipeline',
  search: ['mop', 'maop', 'design factor'],
  compute: liquidDesignPressure,
  equation: { expression: '2 * S * t / D * E * F' },
  inputs: {
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.0213, 1.2] },
    wallThickness: { symbol: 't', kind: 'length', name: 'nominal wall', sample: [0.001, 0.04] },
    yieldStrength: { symbol: 'S', kind: 'stress', name: 'yield strength', sample: [170e6, 555e6] },
    designFactor: { symbol: 'F', kind: 'number', name: 'design factor', sample: [0.4, 0.8] },
    jointFactor: { symbol: 'E', kind: 'number', name: 'longitudinal joint factor', sample: [0.6, 1] },
  },
  output: { symbol: 'P_d', kind: 'gauge pressure', name: 'design pressure' },
  sources: [
    { key: 'cfr-49-195', locator: '195.106(a)' },
    { key: 'asme-b31-4', locator: '403.2' },
    { key: 'rules-of-thumb', locator: 'p. 86-87' },
  ],
  evidence: { form: { tag: 'published', derived: 'hoop stress on the outside diameter at E F S' } },
  limits: [],
});

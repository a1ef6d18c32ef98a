import { atMost, formula, nonNegative, positive, refuse, within } from '../../formula/index.js';
import type { GaugePressure, Length, Stress } from '../../quantity/index.js';

export interface DesignThicknessOutsideInput {
  readonly pressure: GaugePressure;
  readonly outsideDiameter: Length;
  readonly allowableStress: Stress;
  readonly jointFactor: number;
  readonly weldStrengthFactor?: number | undefined;
  readonly temperatureCoefficient?: number | undefined;
}

/**
 * Wall that straight process pipe needs for internal pressure, from its outside diameter (B31.3 equation 3a).
 *
 *$$t = \frac{P D}{2 (S E W + P Y)}$$
 *
 * @param input.pressure                P, internal gauge pressure [Pa], >= 0
 * @param input.outsideDiameter         D [m], > 0
 * @param input.allowableStress         S at the design temperature [Pa], > 0
 * @param input.jointFactor             E, above 0 and at most 1
 * @param input.weldStrengthFactor      W, above 0 and at most 1; 1 when left out (below 427 degC)
 * @param input.temperatureCoefficient  Y, from 0 to 1; 0.4 when left out (ductile steel below 482 degC)
 * @returns pressure design thickness [m], without allowances or under-tolerance
 * @throws CalculationError `invalid-input`; `outside-validity` for P > 0.385 S E or t >= D/6
 * @remarks `orderWall` adds the allowances and takes off the under-tolerance.
 * @see ASME B31.3, 304.1.2, equation (3a)
 */
export function designThicknessOutside(input: DesignThicknessOutsideInput): Length {
  const { pressure: P, outsideDiameter: D, allowableStress: S, jointFactor: E } = input;
  const { weldStrengthFactor: W = 1, temperatureCoefficient: Y = 0.4 } = input;
  nonNegative(P, 'pressure', 'Pa');
  positive(D, 'outsideDiameter', 'm');
  positive(S, 'allowableStress', 'Pa');
  positive(E, 'jointFactor', '');
  atMost(E, 1, 'full strength', 'jointFactor', '');
  positive(W, 'weldStrengthFactor', '');
  atMost(W, 1, 'full strength', 'weldStrengthFactor', '');
  within(Y, 0, 1, 'temperatureCoefficient', '');
  if (!(P <= 0.385 * S * E)) {
    refuse({
      code: 'outside-validity',
      parameter: 'pressure',
      value: P,
      unit: 'Pa',
      constraint: 'must be at most 0.385 S E, {limit}: beyond it the wall needs a special analysis',
      limit: 0.385 * S * E,
      source: 'ASME B31.3, 304.1.2(b)',
    });
  }
  const t = (P * D) / (2 * (S * E * W + P * Y));
  if (!(t < D / 6)) {
    refuse({
      code: 'outside-validity',
      parameter: 'pressure design thickness',
      value: t,
      unit: 'm',
      constraint: 'must be below D/6, {limit}: a thicker wall needs a special analysis',
      limit: D / 6,
      source: 'ASME B31.3, 304.1.2(b)',
    });
  }
  return t as Length;
}

export const designThicknessOutsideFormula = /* @__PURE__ */ formula<DesignThicknessOutsideInput, Length>({
  id: 'pipe/design-thickness-outside',
  title: 'Pressure design thickness on the outside diameter',
  search: ['required thickness', 'minimum wall', 'b31.3', 'retirement thickness'],
  compute: designThicknessOutside,
  equation: { expression: 'P * D / (2 * (S * E * W + P * Y))' },
  inputs: {
    pressure: { symbol: 'P', kind: 'gauge pressure', name: 'internal pressure', sample: [0, 30e6] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.0213, 1.2] },
    allowableStress: { symbol: 'S', kind: 'stress', name: 'allowable stress', sample: [60e6, 200e6] },
    jointFactor: { symbol: 'E', kind: 'number', name: 'joint factor', sample: [0.6, 1] },
    weldStrengthFactor: {
      symbol: 'W',
      kind: 'number',
      name: 'weld strength reduction factor',
      sample: [0.7, 1],
      default: 1,
    },
    temperatureCoefficient: { symbol: 'Y', kind: 'number', name: 'coefficient Y', sample: [0, 0.7], default: 0.4 },
  },
  output: { symbol: 't', kind: 'length', name: 'pressure design thickness' },
  sources: [{ key: 'asme-b31-3', locator: '304.1.2, equation (3a)' }],
  evidence: {
    form: { tag: 'secondary' },
    weldStrengthFactor: { tag: 'secondary' },
    temperatureCoefficient: { tag: 'secondary' },
  },
  limits: [
    { sort: 'stop', text: 'P > 0.385 S E', source: { key: 'asme-b31-3', locator: '304.1.2(b)' } },
    { sort: 'stop', text: 't >= D/6', source: { key: 'asme-b31-3', locator: '304.1.2(b)' } },
  ],
});

import { atMost, formula, nonNegative, positive, refuse, within } from '../../formula/index.js';
import type { GaugePressure, Length, Stress } from '../../quantity/index.js';

export interface DesignThicknessInsideInput {
  readonly pressure: GaugePressure;
  readonly insideDiameter: Length;
  readonly allowance?: Length | undefined;
  readonly allowableStress: Stress;
  readonly jointFactor: number;
  readonly weldStrengthFactor?: number | undefined;
  readonly temperatureCoefficient?: number | undefined;
}

/**
 * Wall that straight process pipe needs for internal pressure, from its bore (B31.3 equation 3b).
 *
 *$$t = \frac{P (d_i + 2 c)}{2 (S E W - P (1 - Y))}$$
 *
 * @param input.pressure                P, internal gauge pressure [Pa], >= 0
 * @param input.insideDiameter          d_i, bore as new [m], > 0
 * @param input.allowance               c, corrosion and mechanical allowances [m], >= 0; 0 when left out
 * @param input.allowableStress         S at the design temperature [Pa], > 0
 * @param input.jointFactor             E, above 0 and at most 1
 * @param input.weldStrengthFactor      W, above 0 and at most 1; 1 when left out (below 427 degC)
 * @param input.temperatureCoefficient  Y, from 0 to 1; 0.4 when left out (ductile steel below 482 degC)
 * @returns pressure design thickness [m], without allowances or under-tolerance
 * @throws CalculationError `invalid-input`; `outside-validity` for P > 0.385 S E or t >= D/6
 * @remarks Agrees with equation (3a) when D = d_i + 2 c + 2 t, which settles the sign: one open data file prints
 *   P (1 - Y) with a plus.
 * @see ASME B31.3, 304.1.2, equation (3b)
 */
export function designThicknessInside(input: DesignThicknessInsideInput): Length {
  const { pressure: P, insideDiameter: d, allowance: c = 0, allowableStress: S, jointFactor: E } = input;
  const { weldStrengthFactor: W = 1, temperatureCoefficient: Y = 0.4 } = input;
  nonNegative(P, 'pressure', 'Pa');
  positive(d, 'insideDiameter', 'm');
  nonNegative(c, 'allowance', 'm');
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
  const spare = S * E * W - P * (1 - Y);
  if (!(spare > 0)) {
    refuse({
      code: 'no-solution',
      parameter: 'pressure',
      value: P,
      unit: 'Pa',
      constraint: 'must be below S E W/(1 - Y), {limit}: no wall holds more',
      limit: (S * E * W) / (1 - Y),
    });
  }
  const t = (P * (d + 2 * c)) / (2 * spare);
  const D = d + 2 * c + 2 * t;
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

export const designThicknessInsideFormula = /* @__PURE__ */ formula<DesignThicknessInsideInput, Length>({
  id: 'pipe/design-thickness-inside',
  title: 'Pressure design thickness on the inside diameter',
  search: ['required thickness', 'minimum wall', 'b31.3', 'retirement thickness'],
  compute: designThicknessInside,
  equation: { expression: 'P * (d_i + 2 * c) / (2 * (S * E * W - P * (1 - Y)))' },
  inputs: {
    pressure: { symbol: 'P', kind: 'gauge pressure', name: 'internal pressure', sample: [0, 30e6] },
    insideDiameter: { symbol: 'd_i', kind: 'length', name: 'inside diameter as new', sample: [0.015, 1.2] },
    allowance: { symbol: 'c', kind: 'length', name: 'sum of the allowances', sample: [0, 0.006], default: 0 },
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
  sources: [{ key: 'asme-b31-3', locator: '304.1.2, equation (3b)' }],
  evidence: {
    form: { tag: 'secondary', derived: 'equation (3a) with D = d_i + 2 c + 2 t' },
    weldStrengthFactor: { tag: 'secondary' },
    temperatureCoefficient: { tag: 'secondary' },
  },
  limits: [
    { sort: 'stop', text: 'P > 0.385 S E', source: { key: 'asme-b31-3', locator: '304.1.2(b)' } },
    { sort: 'stop', text: 't >= D/6', source: { key: 'asme-b31-3', locator: '304.1.2(b)' } },
  ],
});

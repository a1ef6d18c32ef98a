import { atMost, finite, formula, nonNegative, positive, refuse, within } from '../../formula/index.js';
import type { GaugePressure, Length, Stress } from '../../quantity/index.js';

export interface MinimumWallInput {
  readonly pressure: GaugePressure;
  readonly outsideDiameter: Length;
  readonly allowableStress: Stress;
  readonly jointFactor: number;
  readonly temperatureCoefficient?: number | undefined;
  readonly supplementalThickness?: Length | undefined;
  readonly mechanicalAllowance?: Length | undefined;
  readonly structuralMinimum?: Length | undefined;
}

export interface MinimumWall {
  readonly required: Length;
  readonly hoop: Length;
  readonly longitudinal: Length;
}

/**
 * Least wall that straight pipe in service needs for a pressure: the greatest of the hoop, longitudinal and structural
 * values.
 *
 *$$t_C = \frac{P D}{2 (S E + P Y)} + m, \quad t_L = \frac{P D}{4 (S E + P Y)} + t_{sl} + m, \quad t_{min} = \max(t_C, t_L, t_s)$$
 *
 * @param input.pressure                P, internal gauge pressure [Pa], >= 0
 * @param input.outsideDiameter         D [m], > 0
 * @param input.allowableStress         S at the design temperature [Pa], > 0
 * @param input.jointFactor             E, above 0 and at most 1
 * @param input.temperatureCoefficient  Y, from 0 to 1; 0.4 when left out (ductile steel below 482 degC)
 * @param input.supplementalThickness   t_sl, wall that sustained bending and axial force use up [m], >= 0; 0 when left out
 * @param input.mechanicalAllowance     m, threads and grooves [m], >= 0; 0 when left out
 * @param input.structuralMinimum       t_s, for handling and support, API 574 [m], >= 0; 0 when left out
 * @returns `required`, and the values behind it: `hoop` and `longitudinal` [m]
 * @throws CalculationError `invalid-input`; `outside-validity` for P > 0.385 S E or t >= D/6
 * @remarks The structural minimum is a table by size: `structuralMinimumWall` of hoopwright/tables.
 * @see API 579-1/ASME FFS-1, 2C.147 to 2C.151; API RP 574, Table 7
 */
export function minimumWall(input: MinimumWallInput): MinimumWall {
  const { pressure: P, outsideDiameter: D, allowableStress: S, jointFactor: E } = input;
  const { temperatureCoefficient: Y = 0.4, supplementalThickness: tsl = 0 } = input;
  const { mechanicalAllowance: m = 0, structuralMinimum: ts = 0 } = input;
  nonNegative(P, 'pressure', 'Pa');
  positive(D, 'outsideDiameter', 'm');
  positive(S, 'allowableStress', 'Pa');
  positive(E, 'jointFactor', '');
  atMost(E, 1, 'full strength', 'jointFactor', '');
  within(Y, 0, 1, 'temperatureCoefficient', '');
  nonNegative(tsl, 'supplementalThickness', 'm');
  nonNegative(m, 'mechanicalAllowance', 'm');
  nonNegative(ts, 'structuralMinimum', 'm');
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
  const pressureWall = (P * D) / (2 * (S * E + P * Y));
  if (!(pressureWall < D / 6)) {
    refuse({
      code: 'outside-validity',
      parameter: 'pressure design thickness',
      value: pressureWall,
      unit: 'm',
      constraint: 'must be below D/6, {limit}: a thicker wall needs a special analysis',
      limit: D / 6,
      source: 'ASME B31.3, 304.1.2(b)',
    });
  }
  const hoop = pressureWall + m;
  const longitudinal = (P * D) / (4 * (S * E + P * Y)) + tsl + m;
  finite(longitudinal, 'longitudinal wall', 'm');
  return {
    required: Math.max(hoop, longitudinal, ts) as Length,
    hoop: hoop as Length,
    longitudinal: longitudinal as Length,
  };
}

export const minimumWallFormula = /* @__PURE__ */ formula<MinimumWallInput, MinimumWall>({
  id: 'pipe/minimum-wall',
  title: 'Minimum wall for a pressure',
  search: ['required thickness', 't min', 'retirement thickness'],
  compute: minimumWall,
  equation: {
    where: [
      { symbol: 't_C', kind: 'length', expression: 'P * D / (2 * (S * E + P * Y)) + m' },
      { symbol: 't_L', kind: 'length', expression: 'P * D / (4 * (S * E + P * Y)) + t_sl + m' },
    ],
    expression: 'max(t_C, t_L, t_s)',
  },
  inputs: {
    pressure: { symbol: 'P', kind: 'gauge pressure', name: 'internal pressure', sample: [0, 30e6] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.0213, 1.2] },
    allowableStress: { symbol: 'S', kind: 'stress', name: 'allowable stress', sample: [60e6, 200e6] },
    jointFactor: { symbol: 'E', kind: 'number', name: 'joint factor', sample: [0.6, 1] },
    temperatureCoefficient: { symbol: 'Y', kind: 'number', name: 'coefficient Y', sample: [0, 0.7], default: 0.4 },
    supplementalThickness: {
      symbol: 't_sl',
      kind: 'length',
      name: 'wall for supplemental loads',
      sample: [0, 0.003],
      default: 0,
    },
    mechanicalAllowance: { symbol: 'm', kind: 'length', name: 'mechanical allowance', sample: [0, 0.003], default: 0 },
    structuralMinimum: {
      symbol: 't_s',
      kind: 'length',
      name: 'structural minimum wall',
      sample: [0, 0.004],
      default: 0,
    },
  },
  output: {
    required: { symbol: 't_min', kind: 'length', name: 'minimum wall' },
    hoop: { symbol: 't_hoop', kind: 'length', name: 'wall by hoop stress' },
    longitudinal: { symbol: 't_long', kind: 'length', name: 'wall by longitudinal stress' },
  },
  sources: [
    { key: 'api-579', locator: 'Annex 2C, 2C.147 to 2C.151' },
    { key: 'api-574', locator: 'Table 7' },
  ],
  evidence: {
    form: { tag: 'secondary', derived: 'inverse of the maximum allowable working pressure' },
    temperatureCoefficient: { tag: 'secondary' },
  },
  limits: [
    { sort: 'stop', text: 'P > 0.385 S E', source: { key: 'asme-b31-3', locator: '304.1.2(b)' } },
    { sort: 'stop', text: 't >= D/6', source: { key: 'asme-b31-3', locator: '304.1.2(b)' } },
  ],
});

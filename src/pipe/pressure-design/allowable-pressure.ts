import {
  atMost,
  below,
  finite,
  formula,
  nonNegative,
  positive,
  properFraction,
  refuse,
  within,
} from '../../formula/index.js';
import type { GaugePressure, Length, Ratio, Stress } from '../../quantity/index.js';

export interface AllowablePressureInput {
  readonly outsideDiameter: Length;
  readonly wallThickness: Length;
  readonly allowance?: Length | undefined;
  readonly underTolerance?: Ratio | undefined;
  readonly allowableStress: Stress;
  readonly jointFactor: number;
  readonly weldStrengthFactor?: number | undefined;
  readonly temperatureCoefficient?: number | undefined;
}

/**
 * Pressure that straight pipe of a nominal wall may carry when its under-tolerance and its allowance are gone.
 *
 *$$P = \frac{2 S E W t_e}{D - 2 Y t_e}, \quad t_e = (1 - u) t - c$$
 *
 * @param input.outsideDiameter         D [m], > 0
 * @param input.wallThickness           t, nominal wall [m], > 0 and < D/2
 * @param input.allowance               c, corrosion, thread and groove allowances [m], >= 0; 0 when left out
 * @param input.underTolerance          u, from 0 up to, not including, 1; 12.5 % when left out
 * @param input.allowableStress         S at the design temperature [Pa], > 0
 * @param input.jointFactor             E, above 0 and at most 1
 * @param input.weldStrengthFactor      W, above 0 and at most 1; 1 when left out (below 427 degC)
 * @param input.temperatureCoefficient  Y, from 0 to 1; 0.4 when left out (ductile steel below 482 degC)
 * @returns allowable pressure [Pa]
 * @throws CalculationError `invalid-input`; `no-solution` when no wall is left; `outside-validity` for t_e >= D/6 or P > 0.385 S E
 * @remarks Equation (3a) of B31.3 solved for the pressure.
 * @see ASME B31.3, 304.1.2; Pipeline Rules of Thumb Handbook, p. 105
 */
export function allowablePressure(input: AllowablePressureInput): GaugePressure {
  const { outsideDiameter: D, wallThickness: t, allowance: c = 0, underTolerance: u = 0.125 } = input;
  const { allowableStress: S, jointFactor: E, weldStrengthFactor: W = 1, temperatureCoefficient: Y = 0.4 } = input;
  positive(D, 'outsideDiameter', 'm');
  positive(t, 'wallThickness', 'm');
  below(t, D / 2, 'half the outside diameter', 'wallThickness', 'm');
  nonNegative(c, 'allowance', 'm');
  properFraction(u, 'underTolerance');
  positive(S, 'allowableStress', 'Pa');
  positive(E, 'jointFactor', '');
  atMost(E, 1, 'full strength', 'jointFactor', '');
  positive(W, 'weldStrengthFactor', '');
  atMost(W, 1, 'full strength', 'weldStrengthFactor', '');
  within(Y, 0, 1, 'temperatureCoefficient', '');
  const left = (1 - u) * t - c;
  if (!(left > 0)) {
    refuse({
      code: 'no-solution',
      parameter: 'wallThickness',
      value: t,
      unit: 'm',
      constraint: 'must be above c/(1 - u), {limit}: under-tolerance and allowance leave no wall',
      limit: c / (1 - u),
    });
  }
  if (!(left < D / 6)) {
    refuse({
      code: 'outside-validity',
      parameter: 'wall left',
      value: left,
      unit: 'm',
      constraint: 'must be below D/6, {limit}: a thicker wall needs a special analysis',
      limit: D / 6,
      source: 'ASME B31.3, 304.1.2(b)',
    });
  }
  const P = (2 * S * E * W * left) / (D - 2 * Y * left);
  finite(P, 'allowable pressure', 'Pa');
  if (!(P <= 0.385 * S * E)) {
    refuse({
      code: 'outside-validity',
      parameter: 'allowable pressure',
      value: P,
      unit: 'Pa',
      constraint: 'must be at most 0.385 S E, {limit}: beyond it the wall needs a special analysis',
      limit: 0.385 * S * E,
      source: 'ASME B31.3, 304.1.2(b)',
    });
  }
  return P as GaugePressure;
}

export const allowablePressureFormula = /* @__PURE__ */ formula<AllowablePressureInput, GaugePressure>({
  id: 'pipe/allowable-pressure',
  title: 'Allowable pressure of a nominal wall',
  search: ['maop', 'mawp', 'rating', 'working pressure'],
  compute: allowablePressure,
  equation: {
    where: [{ symbol: 't_e', kind: 'length', expression: '(1 - u) * t - c' }],
    expression: '2 * S * E * W * t_e / (D - 2 * Y * t_e)',
  },
  inputs: {
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.0213, 1.2] },
    wallThickness: { symbol: 't', kind: 'length', name: 'nominal wall', sample: [0.004, 0.04] },
    allowance: { symbol: 'c', kind: 'length', name: 'sum of the allowances', sample: [0, 0.003], default: 0 },
    underTolerance: { symbol: 'u', kind: 'ratio', name: 'mill under-tolerance', sample: [0, 0.2], default: 0.125 },
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
  output: { symbol: 'P_a', kind: 'gauge pressure', name: 'allowable pressure' },
  sources: [
    { key: 'asme-b31-3', locator: '304.1.2' },
    { key: 'rules-of-thumb', locator: 'p. 105-106' },
  ],
  evidence: {
    form: { tag: 'secondary', derived: 'equation (3a) solved for P' },
    underTolerance: { tag: 'secondary' },
    weldStrengthFactor: { tag: 'secondary' },
    temperatureCoefficient: { tag: 'secondary' },
  },
  limits: [
    { sort: 'stop', text: 't_e >= D/6', source: { key: 'asme-b31-3', locator: '304.1.2(b)' } },
    { sort: 'stop', text: 'P > 0.385 S E', source: { key: 'asme-b31-3', locator: '304.1.2(b)' } },
  ],
});

import { atMost, finite, formula, nonNegative, positive, refuse, within } from '../../formula/index.js';
import type { GaugePressure, Length, Stress } from '../../quantity/index.js';

export interface MawpInput {
  readonly outsideDiameter: Length;
  readonly wallThickness: Length;
  readonly supplementalThickness?: Length | undefined;
  readonly allowableStress: Stress;
  readonly jointFactor: number;
  readonly temperatureCoefficient?: number | undefined;
}

export interface Mawp {
  readonly mawp: GaugePressure;
  readonly hoop: GaugePressure;
  readonly longitudinal: GaugePressure;
}

/**
 * Maximum allowable working pressure of straight pipe from the wall that is left: the lower of the hoop and the
 * longitudinal value.
 *
 *$$P_C = \frac{2 S E t}{D - 2 Y t}, \quad P_L = \frac{4 S E (t - t_{sl})}{D - 4 Y (t - t_{sl})}, \quad P = \min(P_C, P_L)$$
 *
 * @param input.outsideDiameter         D [m], > 0
 * @param input.wallThickness           t, measured wall less loss still to come and mechanical allowance [m], > 0
 * @param input.supplementalThickness   t_sl, wall that sustained bending and axial force use up [m], >= 0; 0 when left out
 * @param input.allowableStress         S at the design temperature [Pa], > 0
 * @param input.jointFactor             E, above 0 and at most 1
 * @param input.temperatureCoefficient  Y, from 0 to 1; 0.4 when left out (ductile steel below 482 degC)
 * @returns `mawp`, and the two values behind it: `hoop` and `longitudinal` [Pa]
 * @throws CalculationError `invalid-input`; `outside-validity` for t >= D/6; `no-solution` when t_sl takes the whole wall
 * @remarks Uniform wall: a local thin area needs a remaining-strength method.
 * @see API 579-1/ASME FFS-1, 2C.147 to 2C.151
 */
export function mawp(input: MawpInput): Mawp {
  const { outsideDiameter: D, wallThickness: t, supplementalThickness: tsl = 0 } = input;
  const { allowableStress: S, jointFactor: E, temperatureCoefficient: Y = 0.4 } = input;
  positive(D, 'outsideDiameter', 'm');
  positive(t, 'wallThickness', 'm');
  nonNegative(tsl, 'supplementalThickness', 'm');
  positive(S, 'allowableStress', 'Pa');
  positive(E, 'jointFactor', '');
  atMost(E, 1, 'full strength', 'jointFactor', '');
  within(Y, 0, 1, 'temperatureCoefficient', '');
  if (!(t < D / 6)) {
    refuse({
      code: 'outside-validity',
      parameter: 'wallThickness',
      value: t,
      unit: 'm',
      constraint: 'must be below D/6, {limit}: a thicker wall needs a special analysis',
      limit: D / 6,
      source: 'ASME B31.3, 304.1.2(b)',
    });
  }
  const left = t - tsl;
  if (!(left > 0)) {
    refuse({
      code: 'no-solution',
      parameter: 'supplementalThickness',
      value: tsl,
      unit: 'm',
      constraint: 'must be below the wall, {limit}: no wall is left for pressure along the pipe',
      limit: t,
    });
  }
  const hoop = (2 * S * E * t) / (D - 2 * Y * t);
  const longitudinal = (4 * S * E * left) / (D - 4 * Y * left);
  finite(hoop, 'hoop value', 'Pa');
  finite(longitudinal, 'longitudinal value', 'Pa');
  return {
    mawp: Math.min(hoop, longitudinal) as GaugePressure,
    hoop: hoop as GaugePressure,
    longitudinal: longitudinal as GaugePressure,
  };
}

export const mawpFormula = /* @__PURE__ */ formula<MawpInput, Mawp>({
  id: 'pipe/mawp',
  title: 'Maximum allowable working pressure of a thinned pipe',
  search: ['rating'],
  compute: mawp,
  equation: {
    where: [
      { symbol: 'P_C', kind: 'gauge pressure', expression: '2 * S * E * t / (D - 2 * Y * t)' },
      { symbol: 'P_L', kind: 'gauge pressure', expression: '4 * S * E * (t - t_sl) / (D - 4 * Y * (t - t_sl))' },
    ],
    expression: 'min(P_C, P_L)',
  },
  inputs: {
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.0213, 1.2] },
    wallThickness: { symbol: 't', kind: 'length', name: 'wall that counts', sample: [0.004, 0.04] },
    supplementalThickness: {
      symbol: 't_sl',
      kind: 'length',
      name: 'wall for supplemental loads',
      sample: [0, 0.003],
      default: 0,
    },
    allowableStress: { symbol: 'S', kind: 'stress', name: 'allowable stress', sample: [60e6, 200e6] },
    jointFactor: { symbol: 'E', kind: 'number', name: 'joint factor', sample: [0.6, 1] },
    temperatureCoefficient: { symbol: 'Y', kind: 'number', name: 'coefficient Y', sample: [0, 0.7], default: 0.4 },
  },
  output: {
    mawp: { symbol: 'P_max', kind: 'gauge pressure', name: 'maximum allowable working pressure' },
    hoop: { symbol: 'P_hoop', kind: 'gauge pressure', name: 'value by hoop stress' },
    longitudinal: { symbol: 'P_long', kind: 'gauge pressure', name: 'value by longitudinal stress' },
  },
  sources: [{ key: 'api-579', locator: 'Annex 2C, 2C.147 to 2C.151' }],
  evidence: {
    form: { tag: 'secondary', derived: 'hoop: equation (3a) of B31.3 solved for P' },
    temperatureCoefficient: { tag: 'secondary' },
  },
  limits: [
    {
      sort: 'stop',
      text: 't >= D/6: beyond the thin-wall form of the construction code',
      source: { key: 'asme-b31-3', locator: '304.1.2(b)' },
    },
  ],
});

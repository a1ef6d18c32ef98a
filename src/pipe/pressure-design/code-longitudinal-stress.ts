import { atMost, finite, formula, nonNegative, positive, refuse, within } from '../../formula/index.js';
import type { GaugePressure, Length, Stress } from '../../quantity/index.js';

export interface CodeLongitudinalStressInput {
  readonly pressure: GaugePressure;
  readonly outsideDiameter: Length;
  readonly wallThickness: Length;
  readonly supplementalThickness?: Length | undefined;
  readonly jointFactor: number;
  readonly temperatureCoefficient?: number | undefined;
}

/**
 * Longitudinal membrane stress of a pressure by the code wall equation: what `mawp` limits to S.
 *
 *$$s_L = \frac{P}{4 E} \left( \frac{D}{t - t_{sl}} - 4 Y \right)$$
 *
 * @param input.pressure                P, internal gauge pressure [Pa], >= 0
 * @param input.outsideDiameter         D [m], > 0
 * @param input.wallThickness           t, measured wall less loss still to come and mechanical allowance [m], > 0
 * @param input.supplementalThickness   t_sl, wall that sustained bending and axial force use up [m], >= 0; 0 when left out
 * @param input.jointFactor             E, above 0 and at most 1
 * @param input.temperatureCoefficient  Y, from 0 to 1; 0.4 when left out (ductile steel below 482 degC)
 * @returns longitudinal stress [Pa]
 * @throws CalculationError `invalid-input`; `outside-validity` for t >= D/6; `no-solution` when t_sl takes the whole wall
 * @remarks The longitudinal value of `mawp` turned round: at that pressure it returns S.
 * @see API 579-1/ASME FFS-1, Annex 2C
 */
export function codeLongitudinalStress(input: CodeLongitudinalStressInput): Stress {
  const { pressure: P, outsideDiameter: D, wallThickness: t, supplementalThickness: tsl = 0 } = input;
  const { jointFactor: E, temperatureCoefficient: Y = 0.4 } = input;
  nonNegative(P, 'pressure', 'Pa');
  positive(D, 'outsideDiameter', 'm');
  positive(t, 'wallThickness', 'm');
  nonNegative(tsl, 'supplementalThickness', 'm');
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
  const stress = (P / (4 * E)) * (D / left - 4 * Y);
  finite(stress, 'longitudinal stress', 'Pa');
  return stress as Stress;
}

export const codeLongitudinalStressFormula = /* @__PURE__ */ formula<CodeLongitudinalStressInput, Stress>({
  id: 'pipe/code-longitudinal-stress',
  title: 'Longitudinal stress by the code equation',
  search: ['b31.3', 'end cap'],
  compute: codeLongitudinalStress,
  equation: { expression: 'P / (4 * E) * (D / (t - t_sl) - 4 * Y)' },
  inputs: {
    pressure: { symbol: 'P', kind: 'gauge pressure', name: 'internal pressure', sample: [0, 30e6] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.0213, 1.2] },
    wallThickness: { symbol: 't', kind: 'length', name: 'wall that counts', sample: [0.004, 0.04] },
    supplementalThickness: {
      symbol: 't_sl',
      kind: 'length',
      name: 'wall for supplemental loads',
      sample: [0, 0.003],
      default: 0,
    },
    jointFactor: { symbol: 'E', kind: 'number', name: 'joint factor', sample: [0.6, 1] },
    temperatureCoefficient: { symbol: 'Y', kind: 'number', name: 'coefficient Y', sample: [0, 0.7], default: 0.4 },
  },
  output: { symbol: 's_L', kind: 'stress', name: 'longitudinal stress' },
  sources: [{ key: 'api-579', locator: 'Annex 2C' }],
  evidence: {
    form: { tag: 'secondary', derived: 'inverse of the longitudinal value of the maximum allowable working pressure' },
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

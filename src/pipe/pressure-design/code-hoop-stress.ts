import { atMost, finite, formula, nonNegative, positive, refuse, within } from '../../formula/index.js';
import type { GaugePressure, Length, Stress } from '../../quantity/index.js';

export interface CodeHoopStressInput {
  readonly pressure: GaugePressure;
  readonly outsideDiameter: Length;
  readonly wallThickness: Length;
  readonly jointFactor: number;
  readonly temperatureCoefficient?: number | undefined;
}

/**
 * Hoop membrane stress of a pressure by the code wall equation: what `mawp` limits to S.
 *
 *$$s_C = \frac{P}{2 E} \left( \frac{D}{t} - 2 Y \right)$$
 *
 * @param input.pressure                P, internal gauge pressure [Pa], >= 0
 * @param input.outsideDiameter         D [m], > 0
 * @param input.wallThickness           t, measured wall less loss still to come and mechanical allowance [m], > 0
 * @param input.jointFactor             E, above 0 and at most 1
 * @param input.temperatureCoefficient  Y, from 0 to 1; 0.4 when left out (ductile steel below 482 degC)
 * @returns hoop stress [Pa]
 * @throws CalculationError `invalid-input`; `outside-validity` for t >= D/6
 * @remarks The hoop value of `mawp` turned round: at that pressure it returns S.
 * @see API 579-1/ASME FFS-1, Annex 2C
 */
export function codeHoopStress(input: CodeHoopStressInput): Stress {
  const { pressure: P, outsideDiameter: D, wallThickness: t, jointFactor: E } = input;
  const { temperatureCoefficient: Y = 0.4 } = input;
  nonNegative(P, 'pressure', 'Pa');
  positive(D, 'outsideDiameter', 'm');
  positive(t, 'wallThickness', 'm');
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
  const stress = (P / (2 * E)) * (D / t - 2 * Y);
  finite(stress, 'hoop stress', 'Pa');
  return stress as Stress;
}

export const codeHoopStressFormula = /* @__PURE__ */ formula<CodeHoopStressInput, Stress>({
  id: 'pipe/code-hoop-stress',
  title: 'Hoop stress by the code equation',
  search: ['b31.3', 'joint factor'],
  compute: codeHoopStress,
  equation: { expression: 'P / (2 * E) * (D / t - 2 * Y)' },
  inputs: {
    pressure: { symbol: 'P', kind: 'gauge pressure', name: 'internal pressure', sample: [0, 30e6] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.0213, 1.2] },
    wallThickness: { symbol: 't', kind: 'length', name: 'wall that counts', sample: [0.004, 0.04] },
    jointFactor: { symbol: 'E', kind: 'number', name: 'joint factor', sample: [0.6, 1] },
    temperatureCoefficient: { symbol: 'Y', kind: 'number', name: 'coefficient Y', sample: [0, 0.7], default: 0.4 },
  },
  output: { symbol: 's_C', kind: 'stress', name: 'hoop stress' },
  sources: [{ key: 'api-579', locator: 'Annex 2C' }],
  evidence: {
    form: { tag: 'secondary', derived: 'inverse of the maximum allowable working pressure' },
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

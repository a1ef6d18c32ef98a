import { finite, formula, nonNegative, positive, refuse } from '../../formula/index.js';
import type { CorrosionRate, Length, Time } from '../../quantity/index.js';

export interface RemainingLifeInput {
  readonly presentWall: Length;
  readonly requiredWall: Length;
  readonly rate: CorrosionRate;
}

/**
 * Time until the wall is down to what is required.
 *
 * $$\tau = \frac{t - t_{req}}{r}$$
 *
 * @param input.presentWall   t [m], > 0
 * @param input.requiredWall  t_req [m], >= 0 and at most t
 * @param input.rate          r [m/s], > 0
 * @returns remaining life [s]
 * @throws CalculationError `invalid-input`; `no-solution` when the wall is below the required one already
 * @remarks Inspect at half of it or sooner.
 * @see API 570
 */
export function remainingLife(input: RemainingLifeInput): Time {
  const { presentWall: t, requiredWall, rate } = input;
  positive(t, 'presentWall', 'm');
  nonNegative(requiredWall, 'requiredWall', 'm');
  positive(rate, 'rate', 'm/s');
  if (t < requiredWall) {
    const constraint = `must be at least the required wall, ${requiredWall} m: no life is left`;
    refuse({ code: 'no-solution', parameter: 'presentWall', value: t, unit: 'm', constraint });
  }
  const life = (t - requiredWall) / rate;
  finite(life, 'remaining life', 's');
  return life as Time;
}

export const remainingLifeFormula = /* @__PURE__ */ formula<RemainingLifeInput, Time>({
  id: 'pipe/remaining-life',
  title: 'Remaining life',
  search: ['corrosion allowance', 'time to failure'],
  compute: remainingLife,
  equation: { expression: '(t - t_req) / r' },
  inputs: {
    presentWall: { symbol: 't', kind: 'length', name: 'present wall', sample: [0.005, 0.03] },
    requiredWall: { symbol: 't_req', kind: 'length', name: 'required wall', sample: [0.001, 0.01] },
    rate: { symbol: 'r', kind: 'corrosion rate', name: 'corrosion rate', sample: [1e-13, 2e-11] },
  },
  output: { symbol: 'T', kind: 'time', name: 'remaining life' },
  sources: [{ key: 'api-570', locator: 'remaining life' }],
  evidence: { form: { tag: 'secondary' } },
  limits: [],
});

import { formula, positive, within } from '../../formula/index.js';
import type { Ratio, Time } from '../../quantity/index.js';

export interface TimeToLayInput {
  readonly workingTime: Time;
  readonly share: Ratio;
}

/**
 * Time from the first contact of resin and hardener to the last turn of what is laid with it.
 *
 * $$t_a = f\,t_w$$
 *
 * @param input.workingTime t_w, working time at the warmest hour [s], > 0
 * @param input.share       f, share of it that is planned with [1], above 0, at most 1
 * @returns time that the laying may take [s]
 * @throws CalculationError `invalid-input`
 */
export function timeToLay(input: TimeToLayInput): Time {
  const { workingTime: tw, share: f } = input;
  positive(tw, 'workingTime', 's');
  positive(f, 'share', '');
  within(f, 0, 1, 'share', '');
  const ta = f * tw;
  positive(ta, 'time to lay', 's');
  return ta as Time;
}

export const timeToLayFormula = /* @__PURE__ */ formula<TimeToLayInput, Time>({
  id: 'wrap/time-to-lay',
  title: 'Time from the first contact of resin and hardener to the last turn',
  compute: timeToLay,
  equation: { expression: 'f * t_w' },
  inputs: {
    workingTime: { symbol: 't_w', kind: 'time', name: 'working time at the warmest hour', sample: [300, 7200] },
    share: { symbol: 'f', kind: 'ratio', name: 'share of it that is planned with', sample: [0.5, 1] },
  },
  output: { symbol: 't_a', kind: 'time', name: 'time that the laying may take' },
  sources: [],
  evidence: { form: { tag: 'chosen' } },
  limits: [],
});

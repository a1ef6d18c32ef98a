import { atMost, finite, formula, positive } from '../../formula/index.js';
import type { Force } from '../../quantity/index.js';

export interface CapstanTurnsInput {
  readonly looseTension: Force;
  readonly tightTension: Force;
  readonly friction: number;
}

/**
 * Turns round a drum by which a small pull holds a large one (Euler, Eytelwein, solved for the turns).
 *
 * $$N = \frac{1}{2\pi\mu}\ln\frac{T_1}{T_2}$$
 *
 * @param input.looseTension T_2, tension on the loose side [N], > 0
 * @param input.tightTension T_1, tension on the tight side [N], >= T_2
 * @param input.friction mu, coefficient of friction, > 0
 * @returns turns
 * @throws CalculationError `invalid-input`
 * @see statics problem of a hawser on a bollard, solved on a public web page
 */
export function capstanTurns(input: CapstanTurnsInput): number {
  const { looseTension: T2, tightTension: T1, friction: mu } = input;
  positive(T2, 'looseTension', 'N');
  positive(T1, 'tightTension', 'N');
  atMost(T2, T1, 'the tension on the tight side', 'looseTension', 'N');
  positive(mu, 'friction', '');
  const turns = Math.log(T1 / T2) / (2 * Math.PI * mu);
  finite(turns, 'turns', '');
  return turns;
}

export const capstanTurnsFormula = /* @__PURE__ */ formula<CapstanTurnsInput, number>({
  id: 'seal/capstan-turns',
  title: 'Turns that hold a load by friction',
  search: ['belt friction', 'euler'],
  compute: capstanTurns,
  equation: { expression: 'log(T_1 / T_2) / (2 * pi * mu)' },
  inputs: {
    looseTension: { symbol: 'T_2', kind: 'force', name: 'tension on the loose side', sample: [10, 10e3] },
    tightTension: { symbol: 'T_1', kind: 'force', name: 'tension on the tight side', sample: [2000, 100e3] },
    friction: { symbol: 'mu', kind: 'number', name: 'coefficient of friction', sample: [0.05, 0.6] },
  },
  output: { symbol: 'N', kind: 'number', name: 'turns' },
  sources: [{ key: 'web-seal-examples', locator: 'hawser on a bollard' }],
  evidence: { form: { tag: 'secondary', derived: 'inverse of the tension along a band' } },
  limits: [],
});

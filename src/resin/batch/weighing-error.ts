import { formula, positive } from '../../formula/index.js';
import type { Mass, Ratio } from '../../quantity/index.js';

export interface WeighingErrorInput {
  readonly resolution: Mass;
  readonly mass: Mass;
}

/**
 * Greatest error that the resolution of the scale leaves in a weighed mass, with the empty pot tared.
 *
 * $$e = \frac{2 \delta}{m}$$
 *
 * @param input.resolution delta, smallest step of the scale [kg], > 0
 * @param input.mass m, mass to weigh, of the smaller component [kg], > 0
 * @returns relative error [1]
 * @throws CalculationError `invalid-input`
 * @remarks Two readings, the tare and the mass, each one step off.
 */
export function weighingError(input: WeighingErrorInput): Ratio {
  const { resolution: delta, mass: m } = input;
  positive(delta, 'resolution', 'kg');
  positive(m, 'mass', 'kg');
  const e = (2 * delta) / m;
  positive(e, 'weighingError', '');
  return e as Ratio;
}

/** Whether the scale is too coarse for 5 % of the mixing ratio. */
export function weighingErrorTooLarge(input: WeighingErrorInput): boolean {
  return weighingError(input) > 0.05;
}

export const weighingErrorFormula = /* @__PURE__ */ formula<WeighingErrorInput, Ratio>({
  id: 'resin/weighing-error',
  title: 'Error of weighing a component',
  search: ['scale', 'balance'],
  compute: weighingError,
  equation: { expression: '2 * delta / m' },
  inputs: {
    resolution: { symbol: 'delta', kind: 'mass', name: 'smallest step of the scale', sample: [0.0001, 0.01] },
    mass: { symbol: 'm', kind: 'mass', name: 'mass to weigh, of the smaller component', sample: [0.02, 5] },
  },
  output: { symbol: 'e', kind: 'ratio', name: 'relative error of the mass' },
  sources: [],
  evidence: { form: { tag: 'practice' }, weighingErrorTooLarge: { tag: 'practice', note: '5 % by mass' } },
  limits: [
    {
      sort: 'note',
      text: 'the scale is too coarse for this mass: twice its step is more than 5 % of it; mix more or weigh finer',
      beyond: weighingErrorTooLarge,
    },
  ],
});

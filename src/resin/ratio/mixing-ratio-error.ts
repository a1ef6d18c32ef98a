import { formula, positive } from '../../formula/index.js';
import type { Mass, Ratio } from '../../quantity/index.js';

export interface MixingRatioErrorInput {
  readonly massA: Mass;
  readonly massB: Mass;
  readonly partsA: number;
  readonly partsB: number;
}

/**
 * Mixing ratio of what was weighed over the stated ratio; 1 is exact, above 1 means too much B.
 *
 * $$r = \frac{m_B / m_A}{P_B / P_A}$$
 *
 * @param input.massA m_A, mass of A as weighed [kg], > 0
 * @param input.massB m_B, mass of B as weighed [kg], > 0
 * @param input.partsA P_A, parts of A by mass, > 0
 * @param input.partsB P_B, parts of B by mass, > 0
 * @returns ratio as weighed over ratio as stated [1]
 * @throws CalculationError `invalid-input`
 * @remarks The excess stays unreacted. 5 % by mass is a common tolerance; the maker's value governs.
 */
export function mixingRatioError(input: MixingRatioErrorInput): Ratio {
  const { massA: mA, massB: mB, partsA: PA, partsB: PB } = input;
  positive(mA, 'massA', 'kg');
  positive(mB, 'massB', 'kg');
  positive(PA, 'partsA', '');
  positive(PB, 'partsB', '');
  const r = (mB * PA) / (mA * PB);
  positive(r, 'mixingRatioError', '');
  return r as Ratio;
}

/** Whether the ratio is more than 5 % off. */
export function mixingRatioErrorTooLarge(input: MixingRatioErrorInput): boolean {
  return Math.abs(mixingRatioError(input) - 1) > 0.05;
}

export const mixingRatioErrorFormula = /* @__PURE__ */ formula<MixingRatioErrorInput, Ratio>({
  id: 'resin/mixing-ratio-error',
  title: 'Mixing ratio as weighed over the stated one',
  search: ['off ratio', 'weighing'],
  compute: mixingRatioError,
  equation: { expression: 'm_B * P_A / (m_A * P_B)' },
  inputs: {
    massA: { symbol: 'm_A', kind: 'mass', name: 'mass of A as weighed', sample: [0.1, 10] },
    massB: { symbol: 'm_B', kind: 'mass', name: 'mass of B as weighed', sample: [0.1, 10] },
    partsA: { symbol: 'P_A', kind: 'number', name: 'parts of A by mass', sample: [1, 100] },
    partsB: { symbol: 'P_B', kind: 'number', name: 'parts of B by mass', sample: [1, 100] },
  },
  output: { symbol: 'r', kind: 'ratio', name: 'ratio as weighed over ratio as stated' },
  sources: [],
  evidence: { form: { tag: 'practice' }, mixingRatioErrorTooLarge: { tag: 'practice', note: '5 % by mass' } },
  limits: [
    {
      sort: 'note',
      text: 'the mixing ratio is more than 5 % by mass off the stated one',
      beyond: mixingRatioErrorTooLarge,
    },
  ],
});

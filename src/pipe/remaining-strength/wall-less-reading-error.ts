import { formula, nonNegative } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';

export interface WallLessReadingErrorInput {
  readonly wallReading: Length;
  readonly readingError: Length;
}

/**
 * Least wall that a reading leaves: the reading less its error; 0 where the error is the larger.
 *
 * $$t = \max(t_m - e,\ 0)$$
 *
 * @param input.wallReading   t_m, least wall as read [m], >= 0
 * @param input.readingError  e, how far the reading may be off [m], >= 0
 * @returns least wall [m]
 * @throws CalculationError `invalid-input`
 * @remarks For judging the pipe today. A wall of 0 carries nothing.
 */
export function wallLessReadingError(input: WallLessReadingErrorInput): Length {
  const { wallReading: t, readingError: e } = input;
  nonNegative(t, 'wallReading', 'm');
  nonNegative(e, 'readingError', 'm');
  return Math.max(t - e, 0) as Length;
}

export const wallLessReadingErrorFormula = /* @__PURE__ */ formula<WallLessReadingErrorInput, Length>({
  id: 'pipe/wall-less-reading-error',
  title: 'Least wall that a reading leaves',
  search: ['ut reading', 'gauge error', 'wall thickness', 'ultrasonic'],
  compute: wallLessReadingError,
  equation: { expression: 'max(t_m - e, 0 * t_m)' },
  inputs: {
    wallReading: { symbol: 't_m', kind: 'length', name: 'least wall as read', sample: [0, 0.03] },
    readingError: { symbol: 'e', kind: 'length', name: 'error of the reading', sample: [0, 0.002] },
  },
  output: { symbol: 't', kind: 'length', name: 'least wall' },
  sources: [],
  evidence: { form: { tag: 'chosen' } },
  limits: [],
});

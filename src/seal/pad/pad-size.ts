import { finite, formula, nonNegative, oneOf, positive, within } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';
import { sealPractice } from '../practice.js';

/** What the multiple of a procedure is of; many do not say. */
export type PadMultiple = 'area' | 'diameter' | 'not stated';

const multiples = ['area', 'diameter', 'not stated'] as const satisfies readonly PadMultiple[];

/** The largest reading, its name, and each reading. */
export interface PadSize {
  readonly diameter: Length;
  readonly governing: 'area' | 'diameter' | 'margin';
  readonly byArea: Length;
  readonly byDiameter: Length;
  readonly byMargin: Length;
}

export interface PadSizeInput {
  readonly holeDiameter: Length;
  readonly multiple: number;
  readonly multipleOf: PadMultiple;
  readonly margin: Length;
}

/**
 * Diameter of the pad or putty over a hole: a multiple of the size of the hole, or a margin on every side,
 * whichever is larger.
 *
 * $$d_p = \max(k d\ \text{or}\ \sqrt{k}\, d,\ d + 2 m)$$
 *
 * @param input.holeDiameter d, diameter of the circle that encloses the hole [m], > 0
 * @param input.multiple k, pad over hole, in area or in diameter, 1 to 100; no default
 * @param input.multipleOf basis, what the multiple is of, `area`, `diameter` or `not stated`, which is read as the
 *   diameter
 * @param input.margin m, margin beyond the hole on every side [m], >= 0; no default
 * @returns diameter of the pad [m], what sets it, and the three readings [m]
 * @throws CalculationError `invalid-input`
 * @remarks A multiple k of the area is sqrt(k) of the diameter. A larger pad seals over a larger part of doubtful
 *   wall, and feels a larger force: size the band for it.
 */
export function padSize(input: PadSizeInput): PadSize {
  const { holeDiameter: d, multiple: k, multipleOf, margin: m } = input;
  positive(d, 'holeDiameter', 'm');
  within(k, 1, 100, 'multiple', '');
  oneOf(multipleOf, multiples, 'multipleOf');
  nonNegative(m, 'margin', 'm');
  const [byArea, byDiameter, byMargin] = [d * Math.sqrt(k), d * k, d + 2 * m];
  const reading = multipleOf === 'area' ? 'area' : 'diameter';
  const byMultiple = reading === 'area' ? byArea : byDiameter;
  const diameter = Math.max(byMultiple, byMargin);
  finite(byDiameter, 'pad diameter', 'm');
  finite(byMargin, 'pad diameter', 'm');
  return {
    diameter: diameter as Length,
    governing: byMultiple >= byMargin ? reading : 'margin',
    byArea: byArea as Length,
    byDiameter: byDiameter as Length,
    byMargin: byMargin as Length,
  };
}

/** Whether multiple or margin lie below what the trade uses. */
export function padSizeBelowPractice(input: PadSizeInput): boolean {
  return input.multiple < sealPractice.padMultiple || input.margin < sealPractice.padMargin;
}

export const padSizeFormula = /* @__PURE__ */ formula<PadSizeInput, PadSize>({
  id: 'seal/pad-size',
  title: 'Diameter of the pad over a hole',
  search: ['putty', 'patch', 'rubber pad'],
  compute: padSize,
  equation: {
    branches: [
      { when: 'basis == "area"', expression: 'max(d * sqrt(k), d + 2 * m)' },
      { expression: 'max(k * d, d + 2 * m)' },
    ],
  },
  inputs: {
    holeDiameter: {
      symbol: 'd',
      kind: 'length',
      name: 'diameter of the circle that encloses the hole',
      sample: [0.001, 0.06],
    },
    multiple: {
      symbol: 'k',
      kind: 'number',
      name: 'pad over hole, in area or in diameter',
      sample: [1, 5],
      usual: [1, 30],
    },
    multipleOf: {
      symbol: 'basis',
      kind: 'choice',
      name: 'what the multiple is of',
      choices: ['area', 'diameter', 'not stated'],
    },
    margin: { symbol: 'm', kind: 'length', name: 'margin beyond the hole on every side', sample: [0, 0.05] },
  },
  output: {
    diameter: { symbol: 'd_p', kind: 'length', name: 'diameter of the pad' },
    governing: { symbol: 'governing', kind: 'choice', name: 'what sets the diameter' },
    byArea: { symbol: 'd_a', kind: 'length', name: 'diameter if the multiple is of the area' },
    byDiameter: { symbol: 'd_d', kind: 'length', name: 'diameter if the multiple is of the diameter' },
    byMargin: { symbol: 'd_m', kind: 'length', name: 'diameter by the margin' },
  },
  sources: [],
  evidence: { form: { tag: 'practice', note: 'the trade gives the multiple without saying of what' } },
  limits: [
    {
      sort: 'note',
      text: 'Common practice: putty at least three times the size of the defect, and 25 mm beyond the hole on every side.',
      beyond: padSizeBelowPractice,
    },
  ],
});

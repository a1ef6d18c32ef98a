import { below, formula, nonNegative, positive, wholeNumber } from '../formula/index.js';
import { countUp } from '../numeric/index.js';
import type { Length } from '../quantity/index.js';

export interface SheetsSideBySideInput {
  readonly axialLength: Length;
  readonly sheetWidth: Length;
  readonly sideLap?: Length | undefined;
}

/**
 * Sheets laid side by side to cover an axial length.
 *
 * $$N = \left\lceil \frac{L_x - s}{w - s} \right\rceil$$
 *
 * @param input.axialLength L_x, axial length to cover [m], > 0
 * @param input.sheetWidth w, width of the sheet [m], > 0
 * @param input.sideLap s, overlap of neighbouring sheets [m], >= 0 and < w; 0.025 when not given
 * @returns number of sheets, whole, at least 1
 * @throws CalculationError `invalid-input`
 * @remarks A side lap of 0 is a butt joint; stagger the joints of neighbouring plies by at least half a sheet width.
 * @see wording on the side overlap of coating tapes, as a supplier quotes it
 */
export function sheetsSideBySide(input: SheetsSideBySideInput): number {
  const { axialLength: Lx, sheetWidth: w, sideLap: s = 0.025 as Length } = input;
  positive(Lx, 'axialLength', 'm');
  positive(w, 'sheetWidth', 'm');
  nonNegative(s, 'sideLap', 'm');
  below(s, w, 'the sheet width', 'sideLap', 'm');
  const n = Math.max(1, countUp((Lx - s) / (w - s)));
  wholeNumber(n, 1, 'sheets');
  return n;
}

export const sheetsSideBySideFormula = /* @__PURE__ */ formula<SheetsSideBySideInput, number>({
  id: 'wrap/sheets-side-by-side',
  title: 'Sheets side by side',
  compute: sheetsSideBySide,
  equation: {
    expression: 'max(1, ceil(q - 1e-9 * max(1, abs(q))))',
    where: [{ symbol: 'q', kind: 'number', expression: '(L_x - s) / (w - s)' }],
  },
  inputs: {
    axialLength: { symbol: 'L_x', kind: 'length', name: 'axial length to cover', sample: [0.1, 3] },
    sheetWidth: { symbol: 'w', kind: 'length', name: 'width of the sheet', sample: [0.1, 1.3] },
    sideLap: { symbol: 's', kind: 'length', name: 'overlap of neighbouring sheets', sample: [0, 0.05], default: 0.025 },
  },
  output: { symbol: 'N', kind: 'count', name: 'sheets side by side' },
  sources: [{ key: 'coating-tape-wording', locator: 'side overlap of at least 25 mm' }],
  evidence: {
    form: { tag: 'chosen', derived: 'cover laid sheet by sheet' },
    sideLap: { tag: 'secondary', note: 'least side overlap of coating tapes' },
  },
  limits: [],
});

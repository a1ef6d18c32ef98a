import { atMost, below, formula, nonNegative, positive } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';
import { sheetsSideBySide } from '../sheets-side-by-side.js';

/** One band of sheet, wound to its full count of layers before the next; positions from the centre of the wrap. */
export interface SheetBand {
  /** Counted from 1 in the order of laying. */
  readonly band: number;
  /** Edge at which it begins. */
  readonly from: Length;
  /** Edge at which it ends. */
  readonly to: Length;
}

export interface SheetBands {
  readonly lengthOfEach: Length;
  readonly bands: number;
  readonly rows: readonly SheetBand[];
}

export interface SheetBandsInput {
  readonly axialLength: Length;
  readonly sheetWidth: Length;
  readonly sideLap: Length;
  readonly sheetLength: Length;
}

/**
 * Bands of sheet side by side, from one end of the wrap to the other.
 *
 * $$x_{2,k} = \min\left(-\frac{L_x}{2} + k w - (k - 1) s,\; \frac{L_x}{2}\right), \qquad
 *   x_{1,k} = \max\left(-\frac{L_x}{2},\; x_{2,k} - w\right)$$
 *
 * @param input.axialLength L_x, axial length to cover [m], > 0
 * @param input.sheetWidth w, width of the sheet [m], > 0
 * @param input.sideLap s, overlap of neighbouring bands [m], >= 0 and < w
 * @param input.sheetLength L, sheet of all bands [m], > 0
 * @returns sheet of each band, the number of bands, and from where to where each lies
 * @throws CalculationError `invalid-input`, also beyond 10 000 bands
 * @remarks The last band is pushed back to end with the wrap, so that it laps its neighbour by more than s.
 */
export function sheetBands(input: SheetBandsInput): SheetBands {
  const { axialLength: Lx, sheetWidth: w, sideLap: s, sheetLength: L } = input;
  positive(Lx, 'axialLength', 'm');
  positive(w, 'sheetWidth', 'm');
  nonNegative(s, 'sideLap', 'm');
  below(s, w, 'the sheet width', 'sideLap', 'm');
  positive(L, 'sheetLength', 'm');
  const bands = sheetsSideBySide({ axialLength: Lx, sheetWidth: w, sideLap: s });
  atMost(bands, 10_000, 'the most that are laid out one by one', 'bands', '');
  const rows: SheetBand[] = [];
  for (let band = 1; band <= bands; band++) {
    const to = Math.min(-Lx / 2 + band * w - (band - 1) * s, Lx / 2);
    rows.push({ band, from: Math.max(-Lx / 2, to - w) as Length, to: to as Length });
  }
  return { lengthOfEach: (L / bands) as Length, bands, rows };
}

export const sheetBandsFormula = /* @__PURE__ */ formula<SheetBandsInput, SheetBands>({
  id: 'wrap/sheet-bands',
  title: 'Bands of sheet along the pipe',
  compute: sheetBands,
  equation: {
    algorithm:
      'Band after band from -L_x / 2: it ends at -L_x / 2 + k w - (k - 1) s, the last one at L_x / 2, and begins a sheet width before; each takes L / n of the sheet.',
    winner: { name: 'each band', equation: { expression: 'L / n' } },
  },
  inputs: {
    axialLength: { symbol: 'L_x', kind: 'length', name: 'axial length to cover', sample: [0.1, 3] },
    sheetWidth: { symbol: 'w', kind: 'length', name: 'width of the sheet', sample: [0.1, 1.3] },
    sideLap: { symbol: 's', kind: 'length', name: 'overlap of neighbouring bands', sample: [0, 0.05] },
    sheetLength: { symbol: 'L', kind: 'length', name: 'sheet of all bands', sample: [1, 500] },
  },
  output: {
    lengthOfEach: { symbol: 'l', kind: 'length', name: 'sheet of one band' },
    bands: { symbol: 'n', kind: 'count', name: 'bands' },
    rows: {
      symbol: 'rows',
      kind: 'list',
      name: 'rows by band',
      columns: { band: 'count', from: 'length', to: 'length' },
    },
  },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'cover checked point by point' } },
  limits: [],
});

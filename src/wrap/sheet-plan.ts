import { formula, nonNegative, positive, wholeNumber } from '../formula/index.js';
import type { Area, Length } from '../quantity/index.js';
import { sheetLength } from './sheet-length.js';
import { sheetsSideBySide } from './sheets-side-by-side.js';

export interface SheetPlan {
  readonly totalLength: Length;
  readonly sheets: number;
  readonly lengthOfEach: Length;
  readonly sheetArea: Area;
  readonly finalDiameter: Length;
}

export interface SheetPlanInput {
  readonly outsideDiameter: Length;
  readonly plyThickness: Length;
  readonly plies: number;
  readonly axialLength: Length;
  readonly sheetWidth: Length;
  readonly sideLap?: Length | undefined;
  readonly finalLap?: Length | undefined;
}

/**
 * Plan of a wrap of sheet goods: sheets side by side, each wound in all plies with its final lap.
 *
 * $$L = N \left(\pi n (D_0 + n t) + \ell_f\right)$$
 *
 * @param input.outsideDiameter D_0, diameter of the surface under the first ply [m], > 0
 * @param input.plyThickness t, thickness of one ply [m], > 0
 * @param input.plies n, plies, whole, 1 or above
 * @param input.axialLength L_x, axial length to cover [m], > 0
 * @param input.sheetWidth w, width of the sheet [m], > 0
 * @param input.sideLap s, overlap of neighbouring sheets [m], >= 0 and < w; 0.025 when not given
 * @param input.finalLap l_f, final lap of each sheet [m], >= 0; 0.15 when not given
 * @returns sheet length in all, sheets, length of each, area, and the diameter when finished
 * @throws CalculationError `invalid-input`
 * @see derivation on a public web page (Math Forum); wording on the side overlap of coating tapes
 */
export function sheetPlan(input: SheetPlanInput): SheetPlan {
  const {
    outsideDiameter: D0,
    plyThickness: t,
    plies: n,
    axialLength: Lx,
    sheetWidth: w,
    sideLap: s = 0.025 as Length,
    finalLap: lF = 0.15 as Length,
  } = input;
  positive(D0, 'outsideDiameter', 'm');
  positive(t, 'plyThickness', 'm');
  wholeNumber(n, 1, 'plies');
  positive(Lx, 'axialLength', 'm');
  positive(w, 'sheetWidth', 'm');
  nonNegative(s, 'sideLap', 'm');
  nonNegative(lF, 'finalLap', 'm');
  const lengthOfEach = sheetLength({ outsideDiameter: D0, plyThickness: t, plies: n }) + lF;
  const sheets = sheetsSideBySide({ axialLength: Lx, sheetWidth: w, sideLap: s });
  const totalLength = sheets * lengthOfEach;
  positive(totalLength * w, 'sheetArea', 'm2');
  return {
    totalLength: totalLength as Length,
    sheets,
    lengthOfEach: lengthOfEach as Length,
    sheetArea: (totalLength * w) as Area,
    finalDiameter: (D0 + 2 * n * t) as Length,
  };
}

export const sheetPlanFormula = /* @__PURE__ */ formula<SheetPlanInput, SheetPlan>({
  id: 'wrap/sheet-plan',
  title: 'Plan of a sheet wrap',
  search: ['wet lay-up', 'cloth', 'fabric'],
  compute: sheetPlan,
  equation: {
    expression: 'N * (pi * n * (D_0 + n * t) + l_f)',
    where: [
      { symbol: 'q', kind: 'number', expression: '(L_x - s) / (w - s)' },
      { symbol: 'N', kind: 'number', expression: 'max(1, ceil(q - 1e-9 * max(1, abs(q))))' },
    ],
  },
  inputs: {
    outsideDiameter: {
      symbol: 'D_0',
      kind: 'length',
      name: 'diameter of the surface under the first ply',
      sample: [0.06, 1.2],
    },
    plyThickness: { symbol: 't', kind: 'length', name: 'thickness of one ply', sample: [0.0002, 0.002] },
    plies: { symbol: 'n', kind: 'count', name: 'plies', sample: [1, 40] },
    axialLength: { symbol: 'L_x', kind: 'length', name: 'axial length to cover', sample: [0.1, 3] },
    sheetWidth: { symbol: 'w', kind: 'length', name: 'width of the sheet', sample: [0.1, 1.3] },
    sideLap: { symbol: 's', kind: 'length', name: 'overlap of neighbouring sheets', sample: [0, 0.05], default: 0.025 },
    finalLap: { symbol: 'l_f', kind: 'length', name: 'final lap of each sheet', sample: [0.05, 0.5], default: 0.15 },
  },
  output: {
    totalLength: { symbol: 'L', kind: 'length', name: 'sheet length in all' },
    sheets: { symbol: 'N', kind: 'count', name: 'sheets side by side' },
    lengthOfEach: { symbol: 'l_1', kind: 'length', name: 'length of each sheet' },
    sheetArea: { symbol: 'A', kind: 'area', name: 'area of the sheets' },
    finalDiameter: { symbol: 'D_n', kind: 'length', name: 'diameter when finished' },
  },
  sources: [
    { key: 'math-forum-roll', locator: 'derivation' },
    { key: 'coating-tape-wording', locator: 'side overlap of at least 25 mm' },
  ],
  evidence: {
    form: { tag: 'chosen', derived: 'area of the annulus over the ply thickness' },
    sideLap: { tag: 'secondary', note: 'least side overlap of coating tapes' },
    finalLap: { tag: 'practice' },
  },
  limits: [],
});

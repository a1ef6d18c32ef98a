import { atMost, below, finite, formula, nonNegative, positive, wholeNumber } from '../../formula/index.js';
import type { Area, Length } from '../../quantity/index.js';
import { placeOfLayer } from './joint-offsets.js';

/** One band of one layer: positions from the centre of the wrap. */
export interface SheetPiece {
  /** Counted from 1 in the order of laying. */
  readonly piece: number;
  /** Counted from 1 on the pipe outwards. */
  readonly layer: number;
  /** Counted from 1 in its layer. */
  readonly band: number;
  /** Edge at which it begins. */
  readonly from: Length;
  /** Edge at which it ends. */
  readonly to: Length;
  /** From the start of the wrap. */
  readonly begins: Length;
  /** Less than that of the sheet where the band is cut. */
  readonly width: Length;
  /** Sheet in the band: one turn and its lap. */
  readonly sheetLength: Length;
}

export interface SheetLayers {
  readonly totalLength: Length;
  readonly sheetArea: Area;
  /** The most in one layer. */
  readonly bands: number;
  readonly rows: readonly SheetPiece[];
}

export interface SheetLayersInput {
  readonly outsideDiameter: Length;
  readonly plyThickness: Length;
  readonly plies: number;
  readonly axialLength: Length;
  readonly sheetWidth: Length;
  readonly sideLap: Length;
  readonly finalLap: Length;
  readonly places: number;
  readonly stagger: Length;
}

/**
 * Layers of sheet in bands, one turn each, whose joints lie on other places in each layer.
 *
 * $$x_{2,kj} = -\frac{L_x}{2} + w - \frac{g_k}{G}(w - s) + (j - 1)(w - s), \qquad x_{1,kj} = x_{2,kj} - w$$
 *
 * @param input.outsideDiameter D_0, diameter of the surface under the first ply [m], > 0
 * @param input.plyThickness    t, thickness of one ply [m], > 0
 * @param input.plies           n, layers, whole, 1 to 1000
 * @param input.axialLength     L_x, axial length to cover [m], > 0
 * @param input.sheetWidth      w, width of the sheet [m], > 0
 * @param input.sideLap         s, overlap of neighbouring bands [m], >= 0 and < w
 * @param input.finalLap        l_f, lap of each turn on itself [m], >= 0
 * @param input.places          G, places on which the joints are shared out over w - s, whole, 1 or above
 * @param input.stagger         s_t, step by which each layer starts and ends inside the one below it [m], >= 0
 * @returns sheet of all bands and its area before it is cut, the most bands of one layer, and each band of each layer
 * @throws CalculationError `invalid-input`, also beyond 10 000 bands or where the steps leave no layer
 * @remarks The first and the last band of a layer are cut to width. g_k is the place of layer k. A first band that its
 *   neighbour would cover is left out.
 */
export function sheetLayers(input: SheetLayersInput): SheetLayers {
  const { outsideDiameter: D0, plyThickness: t, plies: n, axialLength: Lx, sheetWidth: w, sideLap: s } = input;
  const { finalLap, places, stagger } = input;
  positive(D0, 'outsideDiameter', 'm');
  positive(t, 'plyThickness', 'm');
  wholeNumber(n, 1, 'plies');
  atMost(n, 1000, 'the most that a wrap is planned for', 'plies', '');
  positive(Lx, 'axialLength', 'm');
  positive(w, 'sheetWidth', 'm');
  nonNegative(s, 'sideLap', 'm');
  below(s, w, 'the sheet width', 'sideLap', 'm');
  nonNegative(finalLap, 'finalLap', 'm');
  wholeNumber(places, 1, 'places');
  nonNegative(stagger, 'stagger', 'm');
  // One layer has no step: its limit is endless.
  below(stagger, Lx / 2 / (n - 1), 'half of the length to cover over the steps of all layers', 'stagger', 'm');
  const pitch = w - s;
  atMost((n * (Lx + w)) / pitch, 10_000, 'the most that are laid out one by one', 'bands', '');
  const rows: SheetPiece[] = [];
  let bands = 0;
  let sum = 0;
  for (let layer = 1; layer <= n; layer++) {
    const [start, end] = [-Lx / 2 + (layer - 1) * stagger, Lx / 2 - (layer - 1) * stagger];
    const first = -Lx / 2 + w - (placeOfLayer(layer, places) / places) * pitch;
    const sheetLength = (Math.PI * (D0 + (2 * layer - 1) * t) + finalLap) as Length;
    let band = 0;
    for (let joint = 0, reached = start; reached < end; joint++) {
      const edge = first + joint * pitch;
      // What lies in the lap of the next band, or before the layer begins, is no band of its own.
      if (edge - s <= start) continue;
      const to = edge >= end - 1e-9 * w ? end : edge;
      const from = Math.max(start, edge - w);
      band++;
      sum += sheetLength;
      rows.push({
        piece: rows.length + 1,
        layer,
        band,
        from: from as Length,
        to: to as Length,
        begins: (from + Lx / 2) as Length,
        width: (to - from) as Length,
        sheetLength,
      });
      reached = to;
    }
    bands = Math.max(bands, band);
  }
  finite(sum * w, 'sheetArea', 'm2');
  return { totalLength: sum as Length, sheetArea: (sum * w) as Area, bands, rows };
}

export const sheetLayersFormula = /* @__PURE__ */ formula<SheetLayersInput, SheetLayers>({
  id: 'wrap/sheet-layers',
  title: 'Layers of sheet in bands',
  compute: sheetLayers,
  equation: {
    algorithm:
      'Layer after layer from -L_x / 2 + (k - 1) s_t to L_x / 2 - (k - 1) s_t: its bands end at -L_x / 2 + w - g_k (w - s) / G + (j - 1) (w - s) and begin w before, the outer ones cut; each takes pi (D_0 + (2 k - 1) t) + l_f of the sheet; g_k goes on by about 0.38 G from layer to layer.',
    winner: {
      name: 'the first band',
      gives: { list: 'rows', row: 1, column: 'sheetLength', symbol: 'l_1' },
      equation: { expression: 'pi * (D_0 + t) + l_f' },
    },
  },
  inputs: {
    outsideDiameter: {
      symbol: 'D_0',
      kind: 'length',
      name: 'diameter of the surface under the first ply',
      sample: [0.06, 1.2],
    },
    plyThickness: { symbol: 't', kind: 'length', name: 'thickness of one ply', sample: [0.0002, 0.002] },
    plies: { symbol: 'n', kind: 'count', name: 'layers', sample: [1, 20] },
    axialLength: { symbol: 'L_x', kind: 'length', name: 'axial length to cover', sample: [0.2, 3] },
    sheetWidth: { symbol: 'w', kind: 'length', name: 'width of the sheet', sample: [0.1, 1.3] },
    sideLap: { symbol: 's', kind: 'length', name: 'overlap of neighbouring bands', sample: [0, 0.05] },
    finalLap: { symbol: 'l_f', kind: 'length', name: 'lap of each turn on itself', sample: [0.05, 0.5] },
    places: { symbol: 'G', kind: 'count', name: 'places of the joints over one pitch', sample: [1, 8] },
    stagger: { symbol: 's_t', kind: 'length', name: 'step inside the layer below', sample: [0, 0.004] },
  },
  output: {
    totalLength: { symbol: 'L', kind: 'length', name: 'sheet length in all' },
    sheetArea: { symbol: 'A', kind: 'area', name: 'area of the sheet before it is cut' },
    bands: { symbol: 'N', kind: 'count', name: 'the most bands of one layer' },
    rows: {
      symbol: 'rows',
      kind: 'list',
      name: 'rows by band',
      columns: {
        piece: 'count',
        layer: 'count',
        band: 'count',
        from: 'length',
        to: 'length',
        begins: 'length',
        width: 'length',
        sheetLength: 'length',
      },
    },
  },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'cover and joints checked point by point' } },
  limits: [],
});

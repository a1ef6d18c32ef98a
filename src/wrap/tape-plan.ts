import { atMost, formula, positive, properFraction, wholeNumber } from '../formula/index.js';
import type { Angle, Length, Ratio } from '../quantity/index.js';
import { axialTapeWidth } from './axial-tape-width.js';
import { advanceAt, axialWidthAt, leadCosine, leadSine, turnLengthAt } from './lead-sine.js';
import { minimumLayers } from './minimum-layers.js';
import { passes } from './passes.js';

/** One pass of a tape wrap. */
export interface TapePass {
  /** Counted from 1 in the order of laying. */
  readonly pass: number;
  /** Diameter of the middle of the pass. */
  readonly meanDiameter: Length;
  /** Angle of the tape to a ring round the pipe. */
  readonly leadAngle: Angle;
  /** Way along the pipe that each turn goes on. */
  readonly advance: Length;
  /** Helical turns, without the two closing hoop turns. */
  readonly turns: number;
  /** Tape in the pass, closing turns included. */
  readonly tapeLength: Length;
}

export interface TapePlan {
  readonly passes: number;
  /** Least layer count that the passes leave over the full-count length. */
  readonly layers: number;
  readonly overallLength: Length;
  readonly tapeLength: Length;
  readonly finalDiameter: Length;
  readonly rows: readonly TapePass[];
}

export interface TapePlanInput {
  readonly outsideDiameter: Length;
  readonly tapeWidth: Length;
  readonly overlap: Ratio;
  readonly layerThickness: Length;
  readonly requiredLayers: number;
  readonly fullCountLength: Length;
}

/**
 * Plan of a wrap of overlapped helical tape: passes, overall length and tape, pass by pass, as the diameter grows.
 *
 * @param input.outsideDiameter D_0, diameter of the surface that the first layer is laid on [m], > 0
 * @param input.tapeWidth w, width of the tape [m], > 0
 * @param input.overlap o, overlap of neighbouring turns, as a part of the tape width [1], from 0 up to, not
 *   including, 1
 * @param input.layerThickness t, thickness of one layer of tape [m], > 0
 * @param input.requiredLayers n_r, layers that the design requires, whole, 1 to 1000
 * @param input.fullCountLength L_f, axial length that must carry the full layer count [m], > 0
 * @returns passes, layers, overall length, tape length, diameter when finished, and a row for each pass
 * @throws CalculationError `invalid-input`; `no-solution` when w(1 - o) reaches pi D
 * @remarks Pass k is laid at the mean diameter D0 + (2k - 1) t/(1 - o), since a pass adds 2t/(1 - o) to the diameter.
 *   Each pass starts and ends with one hoop turn without advance; without these two closing turns the far side of the
 *   pipe stays bare at the ends. The full count starts one axial tape width in from each edge, taken at the first
 *   layer, D0 + t, where it is widest. Stretch of the tape is left out: glass and carbon hardly stretch.
 */
export function tapePlan(input: TapePlanInput): TapePlan {
  const {
    outsideDiameter: D0,
    tapeWidth: w,
    overlap: o,
    layerThickness: t,
    requiredLayers: nR,
    fullCountLength: Lf,
  } = input;
  positive(D0, 'outsideDiameter', 'm');
  positive(w, 'tapeWidth', 'm');
  properFraction(o, 'overlap');
  positive(t, 'layerThickness', 'm');
  wholeNumber(nR, 1, 'requiredLayers');
  positive(Lf, 'fullCountLength', 'm');
  atMost(nR, 1000, 'the most that a wrap is planned for', 'requiredLayers', '');
  const N = passes({ requiredLayers: nR, overlap: o });
  const growth = (2 * t) / (1 - o);
  const overallLength = Lf + 2 * axialTapeWidth({ tapeWidth: w, overlap: o, meanDiameter: (D0 + t) as Length });
  const rows: TapePass[] = [];
  let tapeLength = 0;
  for (let pass = 1; pass <= N; pass++) {
    const meanDiameter = (D0 + (pass - 0.5) * growth) as Length;
    // The sine once a pass: asked for each, angle, advance, width and length would each check the same helix again.
    const s = leadSine(w, o, meanDiameter);
    const c = leadCosine(s);
    const advance = advanceAt(w, o, c);
    const turns = (overallLength - axialWidthAt(w, c)) / advance;
    const tape = (turns * turnLengthAt(meanDiameter, c) + 2 * Math.PI * meanDiameter) as Length;
    tapeLength += tape;
    rows.push({ pass, meanDiameter, leadAngle: Math.asin(s) as Angle, advance, turns, tapeLength: tape });
  }
  positive(tapeLength, 'tapeLength', 'm');
  return {
    passes: N,
    layers: N * minimumLayers({ overlap: o }),
    overallLength: overallLength as Length,
    tapeLength: tapeLength as Length,
    finalDiameter: (D0 + N * growth) as Length,
    rows,
  };
}

export const tapePlanFormula = /* @__PURE__ */ formula<TapePlanInput, TapePlan>({
  id: 'wrap/tape-plan',
  title: 'Plan of a helical tape wrap',
  search: ['spiral', 'rolls'],
  compute: tapePlan,
  equation: {
    algorithm:
      'Pass by pass at the mean diameter D_k = D_0 + (2 k - 1) t / (1 - o): turns = (L - w_x) / a, tape = turns * l_1 + 2 pi D_k; L = L_f + 2 w_x of the first layer.',
    winner: {
      name: 'the first pass',
      gives: { list: 'rows', row: 1, column: 'tapeLength', symbol: 'l_1' },
      equation: {
        where: [
          { symbol: 'D_1', kind: 'length', expression: 'D_0 + t / (1 - o)' },
          { symbol: 's', kind: 'number', expression: 'w * (1 - o) / (pi * D_1)' },
          { symbol: 'c', kind: 'number', expression: 'sqrt(1 - s^2)' },
          { symbol: 'w_x', kind: 'length', expression: 'w / c' },
          { symbol: 'a', kind: 'length', expression: 'w * (1 - o) / c' },
          { symbol: 'n_1', kind: 'number', expression: '(L - w_x) / a' },
        ],
        expression: 'n_1 * pi * D_1 / c + 2 * pi * D_1',
      },
    },
  },
  inputs: {
    outsideDiameter: {
      symbol: 'D_0',
      kind: 'length',
      name: 'diameter of the surface that the first layer is laid on',
      sample: [0.06, 1.2],
    },
    tapeWidth: { symbol: 'w', kind: 'length', name: 'width of the tape', sample: [0.025, 0.3] },
    overlap: {
      symbol: 'o',
      kind: 'ratio',
      name: 'overlap of neighbouring turns, as a part of the tape width',
      sample: [0, 0.8],
    },
    layerThickness: { symbol: 't', kind: 'length', name: 'thickness of one layer of tape', sample: [0.0002, 0.002] },
    requiredLayers: { symbol: 'n_r', kind: 'count', name: 'layers that the design requires', sample: [1, 40] },
    fullCountLength: {
      symbol: 'L_f',
      kind: 'length',
      name: 'axial length that must carry the full layer count',
      sample: [0.1, 3],
    },
  },
  output: {
    passes: { symbol: 'N', kind: 'count', name: 'passes' },
    layers: { symbol: 'n', kind: 'count', name: 'layers everywhere over the full-count length' },
    overallLength: { symbol: 'L', kind: 'length', name: 'overall length of the wrap' },
    tapeLength: { symbol: 'l_t', kind: 'length', name: 'tape laid in all passes' },
    finalDiameter: { symbol: 'D_N', kind: 'length', name: 'mean diameter of the finished surface' },
    rows: {
      symbol: 'rows',
      kind: 'list',
      name: 'rows by pass',
      columns: {
        pass: 'count',
        meanDiameter: 'length',
        leadAngle: 'angle',
        advance: 'length',
        turns: 'number',
        tapeLength: 'length',
      },
    },
  },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'area balance of the helix and brute-force layer count' } },
  limits: [],
});

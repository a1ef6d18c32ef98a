import { formula, nonNegative, positive, properFraction, refuse, wholeNumber, within } from '../../formula/index.js';
import type { Length, Ratio } from '../../quantity/index.js';
import { advancePerTurn } from '../advance-per-turn.js';
import { axialTapeWidth } from '../axial-tape-width.js';
import { lengthPerTurn } from '../length-per-turn.js';

/** One pass of tape as it is laid: positions are of the outer edges of the tape, from the centre of the wrap. */
export interface StaggeredPass {
  /** Counted from 1 in the order of laying. */
  readonly pass: number;
  /** Odd passes run forward, even ones back. */
  readonly direction: 'forward' | 'back';
  /** Where the pass begins; below 0 before the centre. */
  readonly from: Length;
  /** Where the pass ends. */
  readonly to: Length;
  /** Tape in the pass, closing turns included. */
  readonly tapeLength: Length;
  /** Diameter of the middle of the pass. */
  readonly meanDiameter: Length;
  /** Width of the tape measured along the pipe. */
  readonly axialWidth: Length;
}

export interface StaggeredPasses {
  readonly tapeLength: Length;
  readonly rows: readonly StaggeredPass[];
}

export interface StaggeredPassesInput {
  readonly outsideDiameter: Length;
  readonly tapeWidth: Length;
  readonly overlap: Ratio;
  readonly layerThickness: Length;
  readonly passes: number;
  readonly overallLength: Length;
  readonly stagger: Length;
}

/**
 * Passes of tape to and fro, each starting and ending a step inside the one below it.
 *
 * $$h_k = \frac{L}{2} - (k - 1)\,s, \qquad l_k = \frac{2 h_k - w_{x,k}}{a_k}\,l_{1,k} + 2\pi D_k$$
 *
 * @param input.outsideDiameter D_0, diameter of the surface that the first layer is laid on [m], > 0
 * @param input.tapeWidth w, width of the tape [m], > 0
 * @param input.overlap o, overlap of neighbouring turns, as a part of the tape width [1], from 0 up to, not
 *   including, 1
 * @param input.layerThickness t, thickness of one layer of tape [m], > 0
 * @param input.passes N, passes, whole, 1 to 1000
 * @param input.overallLength L, length of pipe that the first pass lies on [m], at least the width of the tape along the
 *   pipe
 * @param input.stagger s, step from one pass to the next, at each end [m], >= 0
 * @returns tape of all passes, and for each pass its direction, from where to where it runs, its tape, its mean diameter
 *   and the width of the tape along the pipe
 * @throws CalculationError `invalid-input`; `no-solution` when w(1 - o) reaches pi D
 * @remarks The first pass runs forward, the next back. Each begins and ends with one hoop turn without advance, and lies at
 *   the mean diameter D_k = D_0 + (2k - 1) t/(1 - o), as in `tapePlan`.
 */
export function staggeredPasses(input: StaggeredPassesInput): StaggeredPasses {
  const {
    outsideDiameter: D0,
    tapeWidth: w,
    overlap: o,
    layerThickness: t,
    passes: N,
    overallLength: L,
    stagger: s,
  } = input;
  positive(D0, 'outsideDiameter', 'm');
  positive(w, 'tapeWidth', 'm');
  properFraction(o, 'overlap');
  positive(t, 'layerThickness', 'm');
  wholeNumber(N, 1, 'passes');
  within(N, 1, 1000, 'passes', '');
  positive(L, 'overallLength', 'm');
  nonNegative(s, 'stagger', 'm');
  const rows: StaggeredPass[] = [];
  let sum = 0;
  for (let pass = 1; pass <= N; pass++) {
    const meanDiameter = (D0 + ((2 * pass - 1) * t) / (1 - o)) as Length;
    const helix = { tapeWidth: w, overlap: o, meanDiameter };
    const axialWidth = axialTapeWidth(helix);
    const half = L / 2 - (pass - 1) * s;
    const travel = 2 * half - axialWidth;
    if (travel < 0) noRoom(pass, 2 * half, axialWidth);
    const turns = travel / advancePerTurn(helix);
    const tapeLength = turns * lengthPerTurn(helix) + 2 * Math.PI * meanDiameter;
    sum += tapeLength;
    const forward = pass % 2 === 1;
    rows.push({
      pass,
      direction: forward ? 'forward' : 'back',
      from: (forward ? -half : half) as Length,
      to: (forward ? half : -half) as Length,
      tapeLength: tapeLength as Length,
      meanDiameter,
      axialWidth,
    });
  }
  positive(sum, 'tapeLength', 'm');
  return { tapeLength: sum as Length, rows };
}

function noRoom(pass: number, length: number, axialWidth: number): never {
  refuse({
    code: 'invalid-input',
    parameter: 'overallLength',
    value: length,
    unit: 'm',
    constraint: `must leave pass ${pass} at least the width of its tape along the pipe, {limit}; take a smaller step`,
    limit: axialWidth,
  });
}

export const staggeredPassesFormula = /* @__PURE__ */ formula<StaggeredPassesInput, StaggeredPasses>({
  id: 'wrap/staggered-passes',
  title: 'Passes of tape to and fro',
  search: ['spiral', 'helical wrap'],
  compute: staggeredPasses,
  equation: {
    algorithm:
      'Pass by pass at the mean diameter D_k = D_0 + (2 k - 1) t / (1 - o): it runs from -h_k to h_k, then the next one back, with h_k = L / 2 - (k - 1) s; turns = (2 h_k - w_x) / a, tape = turns * l_1 + 2 pi D_k.',
    winner: {
      name: 'the first pass',
      gives: { list: 'rows', row: 1, column: 'tapeLength', symbol: 'l_k' },
      equation: {
        where: [
          { symbol: 'D_1', kind: 'length', expression: 'D_0 + t / (1 - o)' },
          { symbol: 'q', kind: 'number', expression: 'w * (1 - o) / (pi * D_1)' },
          { symbol: 'c', kind: 'number', expression: 'sqrt(1 - q^2)' },
          { symbol: 'n_1', kind: 'number', expression: '(L - w / c) / (w * (1 - o) / c)' },
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
    passes: { symbol: 'N', kind: 'count', name: 'passes', sample: [1, 12] },
    overallLength: {
      symbol: 'L',
      kind: 'length',
      name: 'length of pipe that the first pass lies on',
      sample: [0.3, 3],
    },
    stagger: { symbol: 's', kind: 'length', name: 'step from one pass to the next, at each end', sample: [0, 0.02] },
  },
  output: {
    tapeLength: { symbol: 'l_t', kind: 'length', name: 'tape laid in all passes' },
    rows: {
      symbol: 'rows',
      kind: 'list',
      name: 'rows by pass',
      columns: {
        pass: 'count',
        direction: 'choice',
        from: 'length',
        to: 'length',
        tapeLength: 'length',
        meanDiameter: 'length',
        axialWidth: 'length',
      },
    },
  },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'tape area equals layers times wrapped area, pass by pass' } },
  limits: [],
});

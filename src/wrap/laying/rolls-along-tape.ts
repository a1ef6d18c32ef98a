import { atMost, formula, positive, wholeNumber } from '../../formula/index.js';
import { countUp } from '../../numeric/index.js';
import type { Length } from '../../quantity/index.js';
import { type StaggeredPass, type StaggeredPassesInput, staggeredPasses } from './staggered-passes.js';

/** One roll: how much of it is laid, and where its end lies. */
export interface RollAlongTape {
  /** Counted from 1 in the order of laying. */
  readonly roll: number;
  /** Tape of it that lies on the pipe. */
  readonly length: Length;
  /** The pass in which it ends. */
  readonly endsInPass: number;
  /** The leading edge of the tape, from the centre of the wrap. */
  readonly endsAt: Length;
}

export interface RollsAlongTape {
  readonly rolls: number;
  readonly rows: readonly RollAlongTape[];
}

export interface RollsAlongTapeInput extends StaggeredPassesInput {
  readonly rollLength: Length;
}

/**
 * Where the rolls of tape end when each is used up before the next is opened; the last one ends with the wrap.
 *
 * $$x = x_k \pm \left(w_{x,k} + \frac{l - \pi D_k}{l_k - 2\pi D_k}\,(2 h_k - w_{x,k})\right)$$
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
 * @param input.rollLength l_r, length of one roll [m], > 0
 * @returns rolls that are opened, and for each one its length, the pass in which it ends, and where its leading edge then
 *   lies; a hoop turn, the helix and a hoop turn make up a pass
 * @throws CalculationError `invalid-input`, also beyond 10 000 rolls; `no-solution` when w(1 - o) reaches pi D
 * @remarks Laps where one roll follows another are left out: they are part of the waste in the order.
 */
export function rollsAlongTape(input: RollsAlongTapeInput): RollsAlongTape {
  const { rollLength } = input;
  positive(rollLength, 'rollLength', 'm');
  const { tapeLength, rows: passes } = staggeredPasses(input);
  const count = countUp(tapeLength / rollLength);
  wholeNumber(count, 1, 'rolls');
  atMost(count, 10_000, 'the most that are counted out one by one', 'rolls', '');
  const rows: RollAlongTape[] = [];
  let [before, index] = [0, 0];
  for (let roll = 1; roll <= count; roll++) {
    const laid = Math.min(roll * rollLength, tapeLength);
    let pass = passes[index] as StaggeredPass;
    while (index < passes.length - 1 && before + pass.tapeLength < laid) {
      before += pass.tapeLength;
      index += 1;
      pass = passes[index] as StaggeredPass;
    }
    const length = laid === tapeLength ? laid - (roll - 1) * rollLength : rollLength;
    rows.push({
      roll,
      length: length as Length,
      endsInPass: pass.pass,
      endsAt: edgeAfter(pass, laid - before) as Length,
    });
  }
  return { rolls: count, rows };
}

/** The leading edge after so much tape of a pass: a hoop turn, the helix, a hoop turn. */
function edgeAfter(pass: StaggeredPass, laid: number): number {
  const { direction, from, to, tapeLength, meanDiameter, axialWidth } = pass;
  const closing = Math.PI * meanDiameter;
  const helix = tapeLength - 2 * closing;
  const travel = Math.abs(to - from) - axialWidth;
  const share = helix > 0 ? Math.min(1, Math.max(0, (laid - closing) / helix)) : 1;
  const way = axialWidth + share * travel;
  return direction === 'forward' ? from + way : from - way;
}

export const rollsAlongTapeFormula = /* @__PURE__ */ formula<RollsAlongTapeInput, RollsAlongTape>({
  id: 'wrap/rolls-along-tape',
  title: 'Where the rolls of tape end',
  search: ['splice', 'roll change'],
  compute: rollsAlongTape,
  equation: {
    algorithm:
      'Each roll is used up before the next is opened. Of each pass a hoop turn, pi D_k, stays at its start, then the edge moves along with the tape of the helix, then a hoop turn stays at its end.',
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
    rollLength: { symbol: 'l_r', kind: 'length', name: 'length of one roll', sample: [3, 60] },
  },
  output: {
    rolls: { symbol: 'n', kind: 'count', name: 'rolls that are opened' },
    rows: {
      symbol: 'rows',
      kind: 'list',
      name: 'rows by roll',
      columns: { roll: 'count', length: 'length', endsInPass: 'count', endsAt: 'length' },
    },
  },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'the edge followed turn by turn along the tape' } },
  limits: [],
});

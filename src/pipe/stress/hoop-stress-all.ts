import { nonNegative, positive, refuse } from '../../formula/index.js';
import type { GaugePressure, Length } from '../../quantity/index.js';

/** Pressure and diameter of one pipe, and many readings of its wall. */
export interface HoopStressAllInput {
  /** Internal pressure [Pa]. */
  readonly pressure: GaugePressure;
  /** Outside diameter [m]. */
  readonly outsideDiameter: Length;
  /** Wall thickness t of each reading [m]. */
  readonly wallThickness: Float64Array;
}

/**
 * Hoop stress on the outside diameter for every wall thickness of a survey: `hoopStress`, row by row, without allocation.
 *
 * @param input.pressure         P, internal gauge pressure [Pa], >= 0
 * @param input.outsideDiameter  D [m], > 0
 * @param input.wallThickness    t of each reading [m], > 0 and < D/2
 * @param out                    takes the hoop stresses [Pa]; as long as `wallThickness`, which it may be
 * @returns `out`
 * @throws CalculationError `invalid-input`, naming the first bad row; `out` then holds the rows before it
 */
export function hoopStressAll(input: HoopStressAllInput, out: Float64Array): Float64Array {
  const { pressure: P, outsideDiameter: D, wallThickness } = input;
  nonNegative(P, 'pressure', 'Pa');
  positive(D, 'outsideDiameter', 'm');
  const rows = wallThickness.length;
  if (out.length !== rows) refuseLength(out.length, rows);
  const load = P * D;
  // Below this wall the stress overflows, so one comparison refuses zero, negative walls, NaN and overflow.
  const floor = load / Number.MAX_VALUE;
  const half = D / 2;
  // The refusal stands behind the loop, since a throw inside it makes the loop half as fast.
  let row = 0;
  for (; row < rows; row++) {
    const t = wallThickness[row] as number;
    if (!(t > floor && t < half)) break;
    out[row] = load / (2 * t);
  }
  if (row !== rows) refuseRow(wallThickness[row] as number, row, half);
  return out;
}

function refuseLength(length: number, rows: number): never {
  const constraint = `must be ${rows}, the length of wallThickness`;
  refuse({ code: 'invalid-input', parameter: 'out.length', value: length, unit: '', constraint });
}

function refuseRow(t: number, row: number, half: number): never {
  const constraint = `must be above 0 and below half the outside diameter, ${half} m, with a finite stress`;
  refuse({ code: 'invalid-input', parameter: `wallThickness[${row}]`, value: t, unit: 'm', constraint });
}

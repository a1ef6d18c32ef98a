import { below, nonNegative, positive, refuse } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';

/** A pipe with one axial part-wall metal loss: its deepest point and its length along the pipe. */
export interface PartWallDefect {
  readonly outsideDiameter: Length;
  readonly wallThickness: Length;
  readonly defectDepth: Length;
  readonly defectLength: Length;
}

/**
 * Refuses a pipe or a defect that cannot be, and a defect deeper than `deepest` of the wall, where `source` forbids the
 * method: what is left of the wall there is too little to be measured with confidence.
 */
export function checkPartWallDefect(defect: PartWallDefect, deepest: number, source: string): void {
  const { outsideDiameter: D, wallThickness: t, defectDepth: d, defectLength: L } = defect;
  checkPipeWall(D, t);
  positive(L, 'defectLength', 'm');
  checkDepth(d, t, deepest, 'defectDepth', source);
}

/** Refuses a pipe that cannot be. */
export function checkPipeWall(D: number, t: number): void {
  positive(D, 'outsideDiameter', 'm');
  positive(t, 'wallThickness', 'm');
  below(t, D / 2, 'half the outside diameter', 'wallThickness', 'm');
}

/** Refuses a depth that reaches through the wall, or is deeper than `deepest` of it. */
export function checkDepth(d: number, t: number, deepest: number, parameter: string, source: string): void {
  nonNegative(d, parameter, 'm');
  below(d, t, 'the wall thickness', parameter, 'm');
  if (d > deepest * t) {
    refuse({
      code: 'outside-validity',
      parameter,
      value: d,
      unit: 'm',
      constraint: `must be at most ${deepest} of the wall thickness, ${deepest * t} m`,
      source,
    });
  }
}

import { atMost, nonNegative, positive, refuse } from '../../formula/index.js';
import type { GaugePressure, Length } from '../../quantity/index.js';

/** What both levels of API 579-1, Part 5 ask for beside the loss itself. */
export interface Api579Shell {
  readonly insideDiameter: Length;
  readonly correctedWall: Length;
  readonly futureAllowance?: Length;
  readonly workingPressure: GaugePressure;
  readonly allowableFactor?: number;
  readonly leastWall?: Length;
  readonly distanceToDiscontinuity?: Length;
}

/**
 * Refuses a shell that cannot be, and one too close to a discontinuity.
 *
 * @internal
 */
export function checkApi579Shell(shell: Api579Shell): void {
  const { insideDiameter: D, correctedWall: t, futureAllowance = 0, workingPressure, allowableFactor = 0.9 } = shell;
  positive(D, 'insideDiameter', 'm');
  positive(t, 'correctedWall', 'm');
  nonNegative(futureAllowance, 'futureAllowance', 'm');
  nonNegative(workingPressure, 'workingPressure', 'Pa');
  positive(allowableFactor, 'allowableFactor', '');
  atMost(allowableFactor, 1, 'full strength', 'allowableFactor', '');
  if (shell.leastWall !== undefined) nonNegative(shell.leastWall, 'leastWall', 'm');
  const distance = shell.distanceToDiscontinuity;
  if (distance === undefined) return;
  nonNegative(distance, 'distanceToDiscontinuity', 'm');
  const reach = nearestDiscontinuity(D, t);
  if (distance < reach) outside('distanceToDiscontinuity', distance, `must be at least 1.8 sqrt(D_i t_c), ${reach} m`);
}

/**
 * How near a structural discontinuity may be, 1.8 sqrt(D_i t_c) [m].
 *
 * @internal
 */
export function nearestDiscontinuity(insideDiameter: number, correctedWall: number): number {
  return 1.8 * (Math.sqrt(insideDiameter) * Math.sqrt(correctedWall));
}

/**
 * Refuses a thinnest point that leaves too little of the wall, or too little wall.
 *
 * @internal
 */
export function checkThinnestPoint(shell: Api579Shell, measured: number, parameter: string): void {
  const { correctedWall, futureAllowance = 0, leastWall = 0.0013 } = shell;
  const left = measured - futureAllowance;
  const fifth = 0.2 * correctedWall;
  if (!(left >= fifth)) outside(parameter, measured, `must leave at least 0.2 of the corrected wall, ${fifth} m`);
  if (left < leastWall) outside(parameter, measured, `must leave at least ${leastWall} m of wall`);
}

function outside(parameter: string, value: number, constraint: string): never {
  refuse({ code: 'outside-validity', parameter, value, unit: 'm', constraint, source: 'API 579-1, Part 5' });
}

/**
 * Whether nothing shows how far the nearest discontinuity is: the method is for losses 1.8 sqrt(D_i t_c) away from one.
 *
 * @param input shell and loss as the assessment has them
 */
export function localMetalLossDiscontinuityUnchecked(input: Api579Shell): boolean {
  return input.distanceToDiscontinuity === undefined;
}

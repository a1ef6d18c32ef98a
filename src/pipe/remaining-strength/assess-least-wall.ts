import { step } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';
import { outside } from './assess-by-method.js';
import { leastWallPressure, leastWallPressureAlone, leastWallPressureAny } from './least-wall-pressure.js';
import {
  LEAST_WALL_ALL_ROUND,
  type MethodInside,
  type MethodOutside,
  type RemainingStrengthJob,
  type RemainingStrengthMethod,
} from './remaining-strength-methods.js';

/** A loss too deep for every method: what the least wall carries all round; nothing to say of any other loss. */
export function assessLeastWall({ input, recorder, safetyFactor }: RemainingStrengthJob): MethodInside | undefined {
  const { outsideDiameter, wallThickness, defectDepth, yieldStrength, maximumPressure } = input;
  if (!leastWallPressureAlone(wallThickness, defectDepth)) return undefined;
  const remainingWall = (wallThickness - defectDepth) as Length;
  const pipe = { outsideDiameter, wallThickness, remainingWall, yieldStrength, safetyFactor, maximumPressure };
  const safePressure = step(recorder, 'pipe/least-wall-pressure', leastWallPressure, pipe);
  const note =
    safePressure > 0
      ? 'the loss is deeper than any method reaches: the pipe counts as thin all round as it is at its thinnest'
      : 'less wall is left than counts as one: it carries nothing';
  return { method: LEAST_WALL_ALL_ROUND, inside: true, safePressure, notes: [note] };
}

/** Why a method does not count for so deep a loss; a DNV-RP-F101 that is named may answer while there is a wall. */
export function tooDeep({ input }: RemainingStrengthJob, method: RemainingStrengthMethod): MethodOutside | undefined {
  const { wallThickness, defectDepth } = input;
  if (!leastWallPressureAlone(wallThickness, defectDepth)) return undefined;
  if (method === 'DNV-RP-F101' && input.method === method && leastWallPressureAny(wallThickness, defectDepth))
    return undefined;
  return outside(
    method,
    'the depth must be at most 0.8 of the wall, with 1.3 mm or more left: beyond that no method counts, but for a named DNV-RP-F101 to 0.85 of the wall',
  );
}

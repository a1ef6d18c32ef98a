import { type Recorder, step } from '../../formula/index.js';
import { outsideDiameterFromCircumference } from '../../pipe/index.js';
import type { Length } from '../../quantity/index.js';
import type { PipeAsBuilt } from './case.js';

/** As stated, or by the circumference: a case has one of the two. */
export function diameterOf({ outsideDiameter, circumference }: PipeAsBuilt, recorder?: Recorder): Length {
  if (outsideDiameter !== undefined) return outsideDiameter;
  const round = { circumference: circumference as Length };
  return step(recorder, 'pipe/outside-diameter-from-circumference', outsideDiameterFromCircumference, round);
}

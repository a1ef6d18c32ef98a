import { missingTo, reaches } from '../../numeric/index.js';
import { exactly, type Length, line, roundedDown, roundedUp } from '../../quantity/index.js';
import type { Designed } from '../design/design.js';
import { notShown } from './points.js';
import type { AsBuiltPoint, AsBuiltRecord } from './record.js';

const EXTENTS = [
  ['axialLength', 'loss length', 'along'],
  ['circumferentialWidth', 'loss width', 'round'],
] as const;

/**
 * How far the loss goes along and round the pipe. Strength, width, overlap and what acts with it were all found for the
 * extents of the case: for a larger one nothing is known but by a design of it.
 */
export function lossPoints({ case: { defect } }: Designed, { survey }: AsBuiltRecord): AsBuiltPoint[] {
  return EXTENTS.map(([extent, point, way]) => {
    const found = survey?.[extent];
    if (found === undefined)
      return notShown(point, `nobody measured the loss ${way} the pipe after the steel was prepared`);
    const name = `loss ${way} the pipe`;
    const size = roundedUp(name, 'length', found);
    const limit = roundedDown(`largest ${name}`, 'length', defect[extent]);
    if (!reaches(limit.value, found)) {
      const shortfall = exactly(`${name}, too large by`, 'length', missingTo(limit.value, found));
      const text = `the loss is {0} ${way} the pipe and the repair was designed for {1}: run the design again with the loss as found; {1} or less meets`;
      return { point, verdict: 'does not meet', ...line(text, size, limit), found: size, limit, shortfall };
    }
    const opening = Math.max(survey?.hole ?? 0, survey?.slot?.[extent] ?? 0) as Length;
    if (!reaches(found, opening)) {
      const text = `the loss is {0} ${way} the pipe and the opening in it {1}: one of these readings is wrong, measure again`;
      return { ...notShown(point, text), ...line(text, size, exactly('opening', 'length', opening)) };
    }
    return { point, verdict: 'meets', text: `the ${name} is no larger than designed for`, found: size, limit };
  });
}

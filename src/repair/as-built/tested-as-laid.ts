import { provenPressure } from '../../acceptance/index.js';
import { reaches } from '../../numeric/index.js';
import { exactly, type GaugePressure, line, roundedDown } from '../../quantity/index.js';
import type { Designed } from '../design/design.js';
import type { Workbook } from '../job/workbook.js';
import { acceptancePoints } from './acceptance.js';
import type { AsBuiltRating, AsBuiltRecord } from './record.js';
import { unrated } from './unrated.js';

/**
 * The pressure that the test of a laminate bears out that is thinner or shorter than designed, or why it bears out none.
 *
 * A test below the planned one bears out less, by the factor between test and design pressure. One above what the laminate
 * resists as it was laid may have hurt it, however well it stood it.
 */
export function testedAsLaid(
  { rules }: Workbook,
  design: Designed,
  record: AsBuiltRecord,
  resistance: GaugePressure,
): AsBuiltRating {
  const { medium, pressure: planned } = design.acceptance.pressureTest;
  const isAsked = medium === 'liquid' || medium === 'gas';
  const because = { text: 'the pressure of its test' };
  const most = roundedDown('what it resists as it was laid', 'gauge pressure', resistance);
  const { pressureTest: made } = record;
  if (made === undefined) {
    if (!isAsked) return { pressure: UNBOUNDED, because };
    return unrated(
      line('no pressure can be stated before its test, and that may not go above {0} as it was laid', most),
    );
  }
  const { lowestPressure, highestPressure = lowestPressure } = made;
  if (!reaches(resistance, highestPressure))
    return unrated(
      line(
        'no pressure can be stated: the test went to {0}, above {1}, what the laminate resists as it was laid; look the whole length over and ask the designer',
        exactly('highest test pressure', 'gauge pressure', highestPressure),
        most,
      ),
    );
  const required = Math.min(planned, lowestPressure) as GaugePressure;
  const point = acceptancePoints(design, record, required).find((each) => each.point === 'pressure test');
  if (point?.verdict !== 'meets') return unrated('no pressure can be stated while these do not meet: pressure test');
  const factor = rules.systemTest.factor.value;
  return { pressure: isAsked ? provenPressure({ testPressure: lowestPressure, factor }) : UNBOUNDED, because };
}

/** Where nobody asks for a test, none bounds the pressure. */
const UNBOUNDED = Number.POSITIVE_INFINITY as GaugePressure;

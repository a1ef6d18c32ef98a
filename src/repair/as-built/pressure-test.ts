import { testPressure } from '../../acceptance/index.js';
import { missingTo, reaches } from '../../numeric/index.js';
import { exactly, type GaugePressure, line, roundedDown } from '../../quantity/index.js';
import { practice } from '../../rules/index.js';
import { limitsOfTest } from '../acceptance/limits-of-test.js';
import type { Designed } from '../design/design.js';
import type { Against } from './against.js';
import type { AsBuiltRecord } from './record.js';

/** A test beyond what repair, line or plan bear may have hurt them, however well they stood it. */
export function beyondTest(design: Designed, { pressureTest: made }: AsBuiltRecord): Against[] {
  if (made === undefined) return [];
  const { highestPressure, lowestPressure } = made;
  const highest = Math.max(lowestPressure, highestPressure ?? lowestPressure) as GaugePressure;
  const over: Against[] = [];
  for (const { name, value } of limitsOfTest(design)) {
    if (reaches(value, highest)) continue;
    const found = exactly('highest test pressure', 'gauge pressure', highest);
    const limit = roundedDown(name, 'gauge pressure', value);
    const shortfall = exactly('test pressure, over by', 'gauge pressure', missingTo(value, highest));
    over.push({
      verdict: 'does not meet',
      says: line(
        `The test went to {0}, above ${name}, {1}: look the whole length over and ask the designer.`,
        found,
        limit,
      ),
      found,
      limit,
      shortfall,
    });
  }
  if (over.length === 0 && highestPressure === undefined)
    over.push({ verdict: 'not shown', says: { text: 'Nobody recorded the highest pressure of the test.' } });
  return over;
}

/** A fall is put down to cooling by the density of fresh water, and of nothing else. */
export function coolingOfOther(design: Designed, { pressureTest: made }: AsBuiltRecord): Against[] {
  if (made?.fall !== 'only cooling' || design.acceptance.pressureTest.liquid === 'fresh water') return [];
  const text =
    'The fall was put down to cooling, and that is known of fresh water only: hold until the temperature stands still.';
  return [{ verdict: 'not shown', says: { text } }];
}

/** What lost more than a test may be over its pressure has fallen, whatever the record says of it. */
export function fallUnsaid({ pressureTest: made }: AsBuiltRecord): Against[] {
  if (made?.fall !== 'none' || made.highestPressure === undefined) return [];
  const { lowestPressure, highestPressure } = made;
  const most = testPressure({ pressure: lowestPressure, factor: practice.highestTestPressure.value });
  if (reaches(most, highestPressure)) return [];
  const says = line(
    'The test went to {0} and down to {1}, and the record says that nothing fell: what has fallen is a leak until its cause is found.',
    exactly('highest test pressure', 'gauge pressure', highestPressure),
    exactly('lowest test pressure', 'gauge pressure', lowestPressure),
  );
  return [{ verdict: 'not shown', says }];
}

import { fromDayToDay } from '../../quantity/clock.js';
import { exactly, roundedDown } from '../../quantity/index.js';
import { practice } from '../../rules/index.js';
import type { Designed } from '../design/design.js';
import { daysOf } from './days.js';
import { notShown } from './points.js';
import type { AsBuiltPoint, AsBuiltRecord } from './record.js';

/** What cracks steel goes on between the survey and the wrap: the test has to be as young on the day of laying. */
export function crackTestPoint(
  { case: { service } }: Designed,
  { batches = [], laidOn }: AsBuiltRecord,
): AsBuiltPoint[] {
  const { cracking } = service;
  if (cracking === undefined || cracking === 'none' || cracking.test === undefined) return [];
  const point = 'crack test';
  const laid = daysOf(batches, 'laminate resin', laidOn);
  const age = fromDayToDay(cracking.test.date, laid?.last);
  if (age === undefined)
    return [
      notShown(
        point,
        'nobody recorded the day on which the laminate was laid, which the test for cracks has to be near',
      ),
    ];
  const most = practice.crackTestAge.value;
  const found = exactly('age of the crack test', 'time', age);
  const limit = roundedDown('most', 'time', most);
  if (age <= most)
    return [{ point, verdict: 'meets', text: 'the test for cracks was young enough on the day', found, limit }];
  const text = 'the test for cracks was too old on the day of laying: cracks grow while the line runs';
  return [{ point, verdict: 'does not meet', text, found, limit }];
}

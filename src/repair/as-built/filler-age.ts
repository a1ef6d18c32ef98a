import { reaches } from '../../numeric/reach.js';
import { fromDayToDay, fromFirstStart } from '../../quantity/clock.js';
import { exactly, type Line, line, roundedDown } from '../../quantity/index.js';
import { practice } from '../../rules/index.js';
import { elapsedTime } from '../../site/index.js';
import type { Designed } from '../design/design.js';
import { stepAt } from '../timeline/timeline.js';
import { daysOf } from './days.js';
import { notShown } from './points.js';
import type { AsBuiltPoint, AsBuiltRecord } from './record.js';

/** Filler that lies open chalks and takes up grease, and the steel beside it rusts: the wrap follows when the plan has it. */
export function fillerAgePoint(design: Designed, { batches = [], laidOn }: AsBuiltRecord): AsBuiltPoint[] {
  if (design.case.filler === 'none') return [];
  const point = 'filler age';
  const filled = daysOf(batches, 'filler');
  // Where the days contradict each other, which the batches say, the worse one counts here.
  const laid = daysOf(batches, 'laminate resin', laidOn);
  if (filled === undefined || laid === undefined)
    return [notShown(point, 'nobody recorded the days on which the filler was mixed and the laminate was laid')];
  const lain = fromDayToDay(filled.first, laid.last) ?? Number.NaN;
  const longest = fromFirstStart(plannedFor(design), practice.fillerMayLie.value);
  const faults: Line[] = [];
  if (laid.first < filled.last) faults.push(line('the laminate was laid before the filler was mixed'));
  if (!reaches(longest, lain))
    faults.push(
      line(
        'the filler lay for {0} under no wrap, where plan and calendar have {1}: it is abraded anew, and the steel beside it prepared',
        exactly('filler lay', 'time', lain),
        roundedDown('longest', 'time', longest),
      ),
    );
  const [fault] = faults;
  if (fault !== undefined) return [{ point, verdict: 'does not meet', ...fault }];
  return [{ point, verdict: 'meets', text: 'the wrap followed the filler when the plan has it' }];
}

/** From the first filler to the last turn. */
function plannedFor({ timeline }: Designed) {
  const [filler, wrap] = [stepAt(timeline, 'filler'), stepAt(timeline, 'wrap')];
  if (filler === undefined || wrap === undefined)
    throw new Error('a design with filler has no step for it: a fault of this library');
  return elapsedTime({ from: filler.startsAt, to: wrap.endsAt });
}

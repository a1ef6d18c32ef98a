import { heading, step } from '../../formula/index.js';
import { fromFirstStart } from '../../quantity/clock.js';
import type { Time } from '../../quantity/index.js';
import { elapsedTime, hardest } from '../../site/index.js';
import type { AsFound } from '../design/design.js';
import type { SiteDesign } from '../design/design-work.js';
import type { Workbook } from '../job/workbook.js';
import type { Duration } from '../timeline/duration.js';
import { endOf, type StepId, type Timeline, type TimelineStep } from '../timeline/timeline.js';
import { judgeClimate } from './climate.js';
import { decisionOf } from './reason.js';
import { requiredSurface, steelReasons } from './surface.js';

/**
 * Whether work may start at the pipe, by the readings and the forecast of the case. The crew reads again on the day: the
 * answer is a hold point of the plan and changes nothing in the design.
 */
export function judgeSite(work: Workbook, { found, timeline, late = 0 as Time }: SiteDemand): SiteDesign {
  heading(work.recorder, 'Site');
  const holdTime = holdTimeOf(work, timeline);
  const gate = fromFirstStart(late, timeline === undefined ? (0 as Time) : endOf(timeline, 'gate'));
  const required = requiredSurface(work.case, found.throughWall);
  const steelAgainst = steelReasons(work.case.site, required);
  const climate = judgeClimate(work, gate, holdTime, openHoursOf(timeline));
  const [weather, steel] = [decisionOf(climate.reasons), decisionOf(steelAgainst)];
  return {
    decision: hardest([weather, steel]),
    weather,
    steel,
    reasons: [...climate.reasons, ...steelAgainst],
    ...climate.read,
    holdTime,
    ...required,
  };
}

/** What stands on the hours: when the gate stands, and how long what follows it takes. */
export interface SiteDemand {
  readonly found: AsFound;
  /** Without it the readings of the day are judged, and how long they have to hold is open. */
  readonly timeline: Timeline | undefined;
  /** How much later than the forecast the timeline starts. */
  readonly late?: Time | undefined;
}

/**
 * How long the climate has to hold: from the gate, where resin is opened, to the end of the last cure. Not known where the
 * time of any step in between is not.
 */
function holdTimeOf({ recorder }: Workbook, hours: Timeline | undefined): Duration {
  if (hours === undefined) return { known: false, because: UNTIMED };
  const from = endOf(hours, 'gate');
  // An hour that was entered for the wrap may lie before the gate: then nothing is left to hold.
  const to = Math.max(from, endOf(hours, 'cure')) as Time;
  const time = step(recorder, 'site/elapsed-time', elapsedTime, { from, to }, 'climate that has to hold');
  // Of a check the plan adds the time, and the crew reads the climate again there.
  const because = openHoursOf(hours) ?? openOf(hours, () => true);
  return because === undefined ? { known: true, time } : { known: false, because, atLeast: time };
}

const UNTIMED = 'the hours of the work are not worked out';

/** Why the end of a cure, or of the work before it, is not known: then no forecast is known to be long enough. */
function openHoursOf(hours: Timeline | undefined): string | undefined {
  if (hours === undefined) return UNTIMED;
  for (const { takes, duration } of hours.steps) if ('cure' in takes && !duration.known) return duration.because;
  return openOf(hours, ({ sort }) => sort !== 'hold point');
}

function openOf({ steps }: Timeline, counts: (step: TimelineStep) => boolean): string | undefined {
  const at = (name: StepId): number => steps.findIndex(({ id }) => id === name);
  const step = steps.slice(at('gate'), at('cure')).find((each) => counts(each) && !each.duration.known);
  return step === undefined || step.duration.known ? undefined : `the time of "${step.id}": ${step.duration.because}`;
}

import { nonNegative, refuse } from '../../formula/index.js';
import { type ClockTime, laterThan, onClock } from '../../quantity/clock.js';
import type { Time } from '../../quantity/index.js';
import type { Designed } from '../design/design.js';
import type { SiteDesign } from '../design/design-work.js';
import { openWorkbook } from '../job/open-workbook.js';
import { steelIsForeseen, steelOverTime } from '../mix-and-cure/steel-temperatures.js';
import { judgeSite } from '../site/site.js';
import { type Cures, historyLeft } from '../timeline/cure-law.js';
import { type Entered, type Timeline, timeline } from '../timeline/timeline.js';
import { readHour } from './clock.js';
import type { PlanOptions } from './plan.js';

/**
 * The timeline of a design with what is known better by now (another start, real hours, times of steps), and its gate.
 *
 * @throws CalculationError `invalid-input` for an hour or a time of a step that the job does not have, or an hour without
 *   a start
 */
export function hoursWith(design: Designed, start: string | undefined, options: PlanOptions): Hours {
  checkNames(design, options);
  const { actual, durations } = options;
  const began = start === undefined ? undefined : readHour(start, 'start');
  const late = lateness(design, began);
  const { timeline: planned, site } = design;
  const history = historyLeft(steelOverTime(design.case.site), late);
  const cures = { laws: design.cures, history };
  if (late === 0 && actual === undefined && durations === undefined) return { timeline: planned, site, cures };
  for (const [id, time] of Object.entries(durations ?? {})) nonNegative(time, `durations.${id}`, 's');
  const job = { steps: planned.steps, laws: design.cures, history };
  const moved = timeline(job, { clock: clockOf(actual, began), durations });
  checkForeseen(design, moved, actual);
  const gate = judgeSite(openWorkbook(design.case, { rules: design.options.rules }), {
    found: design.found,
    timeline: moved,
    late,
  });
  return { timeline: moved, site: gate, cures };
}

/** The hours of a plan, and the gate of the site at the hour to which they move it. */
interface Hours {
  readonly timeline: Timeline;
  readonly site: SiteDesign;
  readonly cures: Cures;
}

/** How much later than in the case the job starts, on the hours of its forecast; on steel that stays as it is, no matter. */
function lateness({ case: { crew, site } }: Designed, start: ClockTime | undefined): Time {
  if (start === undefined || crew === undefined) return 0 as Time;
  const late = laterThan(readHour(crew.start, 'crew.start'), start);
  if (late >= 0) return late;
  if (!steelIsForeseen(site)) return 0 as Time;
  refuse({
    code: 'invalid-input',
    parameter: 'start',
    value: onClock(start, 0 as Time),
    unit: '',
    constraint: `must not be before ${crew.start}: the hours that the case foresees begin there; an hour of the next day is written as 2 07:00, and an earlier start needs crew.start and the foreseen hours of the case from then on`,
  });
}

/** Before the first hour that is foreseen nobody knows the steel on which a material was laid. */
function checkForeseen({ case: { site } }: Designed, { steps }: Timeline, actual: PlanOptions['actual'] = {}): void {
  if (!steelIsForeseen(site)) return;
  for (const { id, startsAt } of steps) {
    if (startsAt >= 0) continue;
    refuse({
      code: 'invalid-input',
      parameter: `actual.${id}`,
      value: actual[id] ?? '',
      unit: '',
      constraint:
        'must not be before the start of the job, where the hours that the case foresees begin; an hour of the next day is written as 2 07:00',
    });
  }
}

function clockOf(actual: PlanOptions['actual'] = {}, start: ClockTime | undefined): Entered['clock'] {
  const hours = Object.entries(actual);
  const [first] = hours;
  if (first === undefined) return undefined;
  const [id, text] = first;
  if (start === undefined) {
    refuse({
      code: 'invalid-input',
      parameter: `actual.${id}`,
      value: text,
      unit: '',
      constraint: 'needs the start of the job on the clock: crew.start of the case, or the start of the plan',
    });
  }
  const began: Record<string, ClockTime> = {};
  for (const [step, hour] of hours) began[step] = readHour(hour, `actual.${step}`);
  return { start, began };
}

function checkNames(
  { timeline: { steps } }: Designed,
  { actual = {}, durations = {}, passed = [] }: PlanOptions,
): void {
  const ids: readonly string[] = steps.map(({ id }) => id);
  const holds: readonly string[] = steps.flatMap(({ id, sort }) => (sort === 'hold point' ? [id] : []));
  for (const [option, names, known, what] of [
    ['actual', Object.keys(actual), ids, 'step'],
    ['durations', Object.keys(durations), ids, 'step'],
    ['passed', passed, holds, 'hold point'],
  ] as const) {
    for (const name of names) {
      if (known.includes(name)) continue;
      const constraint = `must be a ${what} of this plan: ${known.join(', ')}`;
      refuse({ code: 'invalid-input', parameter: `${option}.${name}`, value: name, unit: '', constraint });
    }
  }
}

import {
  cureWaitOverHistoryHasUncreditedTime,
  cureWaitOverHistoryLeavesTestedSpan,
  type TemperatureStep,
} from '../../cure/index.js';
import { heading, step } from '../../formula/index.js';
import { reaches } from '../../numeric/index.js';
import { exactly, line, roundedUp, type Time } from '../../quantity/index.js';
import { placingTime } from '../../resin/index.js';
import { practice } from '../../rules/index.js';
import type {
  AcceptanceDesign,
  CureDesign,
  CureDesigns,
  MixDesigns,
  RollsDesign,
  SealDesign,
} from '../design/design-work.js';
import { type Open, open } from '../job/stage.js';
import { need, type Workbook, warnCrew } from '../job/workbook.js';
import { outsideTestedSpan } from '../mix-and-cure/cure-warnings.js';
import {
  coldestWhileCuring,
  steelIsForeseen,
  steelOverTime,
  warmerThanAir,
} from '../mix-and-cure/steel-temperatures.js';
import { historyLeft } from './cure-law.js';
import type { CureUse } from './duration.js';
import { jobSteps } from './job-steps.js';
import { stepsOf } from './steps-of.js';
import { type StepId, type Timeline, timeline } from './timeline.js';

/** What the earlier stages say about the hours of the work. */
export interface TimelineDemand {
  readonly seal: SealDesign | 'none';
  readonly cures: CureDesigns;
  readonly mixes: MixDesigns;
  readonly rolls: RollsDesign;
  readonly acceptance: AcceptanceDesign;
}

/** The hours of the whole job, from the permit to the return to service, as the case plans it. */
export function planTimeline(
  work: Workbook,
  { seal, cures, mixes, rolls, acceptance }: TimelineDemand,
): Timeline | Open {
  heading(work.recorder, 'Hours of the work');
  const placing = placingOf(work, mixes);
  const steps = jobSteps({ seal, cures, rolls, acceptance, placing });
  const history = steelOverTime(work.case.site, work.recorder);
  const hours = timeline({ steps, laws: cures, history }, {}, work.recorder);
  const [first = 'cure'] = hours.steps.flatMap(({ takes }) =>
    'cure' in takes && cures[takes.cure] !== 'none' ? [stepsOf[takes.cure].wait] : [],
  );
  warnOfHeating(work, first);
  let complete = true;
  for (const { takes, startsAt, duration } of hours.steps) {
    if (!('cure' in takes)) continue;
    const cure = cures[takes.cure];
    if (cure === 'none') continue;
    warnOfHistory(work, takes.cure, cure, historyLeft(history, startsAt));
    if (!duration.known) {
      historyTooShort(work, cure);
      complete = false;
    }
  }
  return complete ? hours : open;
}

/**
 * Steel that is foreseen warmer than it is forecast, or read where there is no forecast, is heated: without that there is no
 * such cure. Whoever waits for the first resin is told.
 */
function warnOfHeating(work: Workbook, step: StepId): void {
  const { site } = work.case;
  if (!steelIsForeseen(site)) warnOfCoolAir(work, step);
  const coldest = coldestWhileCuring(site);
  if (coldest <= coldestWhileCuring({ ...site, history: undefined })) {
    warnOfWarmSteel(work, step);
    return;
  }
  warnCrew(
    work,
    step,
    line(
      `The hours of each cure rest on steel that is heated above its ${site.forecast === undefined ? 'reading' : 'forecast'}: keep it at {0} or more from the first resin to the hardness, read it every hour. Colder, the hours and the transition of this plan do not hold.`,
      roundedUp('coldest heated steel', 'temperature', coldest),
    ),
  );
}

/** Steel does not stay warmer than the air by itself, whatever the case foresees. */
function warnOfWarmSteel(work: Workbook, step: StepId): void {
  const warm = warmerThanAir(work.case.site);
  if (warm === undefined) return;
  warnCrew(
    work,
    step,
    line(
      'The hours of each cure count on steel of {0} in air of {1}: it stays so only where it is heated, carries warm contents or lies in the sun. Read it every hour; colder, the hours of this plan do not hold.',
      roundedUp('steel as foreseen', 'temperature', warm.steel),
      exactly('air', 'temperature', warm.air),
    ),
  );
}

/** Steel that nobody foresees is taken to stay as it is read, and colder air draws its heat. */
function warnOfCoolAir(work: Workbook, step: StepId): void {
  const { pipeTemperature, airTemperature } = work.case.site;
  if (reaches(airTemperature, pipeTemperature)) return;
  warnCrew(
    work,
    step,
    line(
      'The case foresees no hours of the steel: every cure takes it to stay as it is read, {0}, and the air is colder, {1}. Read the steel every hour; colder, the hours of this plan do not hold.',
      roundedUp('steel as read', 'temperature', pipeTemperature),
      exactly('air', 'temperature', airTemperature),
    ),
  );
}

function placingOf(work: Workbook, { filler: mix }: MixDesigns): Time | 'none' {
  const { filler } = work.case;
  if (filler === 'none' || mix === 'none') return 'none';
  return step(work.recorder, 'resin/placing-time', placingTime, {
    batches: mix.batches,
    mass: mix.mass,
    placingRate: filler.rate,
    mixingTime: practice.mixingTime.value,
  });
}

/** What a cure rests on over the hours that it really gets. */
function warnOfHistory(
  work: Workbook,
  use: CureUse,
  { material, law }: CureDesign,
  steps: readonly TemperatureStep[],
): void {
  if (law.sort !== 'over the history') return;
  const input = {
    steps,
    requiredTime: law.requiredTime,
    mechanism: law.mechanism,
    referenceTemperature: law.referenceTemperature,
    minimumTemperature: law.minimumTemperature,
    testedFrom: law.testedFrom,
    testedTo: law.testedTo,
  };
  if (cureWaitOverHistoryLeavesTestedSpan(input))
    warnCrew(work, stepsOf[use].wait, outsideTestedSpan(`cure of ${material}`));
  if (cureWaitOverHistoryHasUncreditedTime(input)) {
    warnCrew(
      work,
      stepsOf[use].wait,
      `Part of the temperature history is too cold for ${material} to cure: it counts nothing.`,
    );
  }
}

function historyTooShort(work: Workbook, { material }: CureDesign): void {
  need(
    work,
    'site.history',
    `the temperature history ends before ${material} has cured: it has to reach further, or be warmer`,
    'the weather forecast, or whoever heats the pipe',
  );
}

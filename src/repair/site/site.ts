import { heading, step } from '../../formula/index.js';
import type { Time } from '../../quantity/index.js';
import { elapsedTime, hardest } from '../../site/index.js';
import type { AsFound } from '../design/design.js';
import type { SiteDesign } from '../design/design-work.js';
import type { Workbook } from '../job/workbook.js';
import { endOf, type Timeline } from '../timeline/timeline.js';
import { judgeClimate } from './climate.js';
import { decisionOf } from './reason.js';
import { requiredSurface, steelReasons } from './surface.js';

/**
 * Whether work may start at the pipe, by the readings and the forecast of the case. The crew reads again on the day: the
 * answer is a hold point of the plan and changes nothing in the design.
 */
export function judgeSite(work: Workbook, { found, timeline }: { found: AsFound; timeline: Timeline }): SiteDesign {
  heading(work.recorder, 'Site');
  const holdTime = holdTimeOf(work, timeline);
  const required = requiredSurface(work.case, found.throughWall);
  const steelAgainst = steelReasons(work.case.site, required);
  const climate = judgeClimate(work, holdTime);
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

/** How long the climate has to hold: from the gate, where resin is opened, to the end of the last cure. */
function holdTimeOf({ recorder }: Workbook, hours: Timeline): Time {
  const from = endOf(hours, 'gate');
  const to = endOf(hours, 'cure');
  return step(recorder, 'site/elapsed-time', elapsedTime, { from, to }, 'climate that has to hold');
}

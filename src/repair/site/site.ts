import { heading } from '../../formula/index.js';
import type { Time } from '../../quantity/index.js';
import { hardest } from '../../site/index.js';
import type { AsFound, CureDesigns, MixDesigns } from '../design/design.js';
import type { RollsDesign, SiteDesign } from '../design/design-work.js';
import type { Workbook } from '../job/workbook.js';
import { placingTime } from '../mix-and-cure/mix.js';
import { judgeClimate } from './climate.js';
import { decisionOf } from './reason.js';
import { requiredSurface, steelReasons } from './surface.js';

/**
 * Whether work may start at the pipe, by the readings and the forecast of the case. The crew reads again on the day: the
 * answer is a hold point of the plan and changes nothing in the design.
 */
export function judgeSite(
  work: Workbook,
  { found, cures, mixes, rolls }: { found: AsFound; cures: CureDesigns; mixes: MixDesigns; rolls: RollsDesign },
): SiteDesign {
  const holdTime = holdTimeOf(work, cures, mixes, rolls);
  heading(work.recorder, 'Site');
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

/** How long the climate has to hold: every wait, the placing of the filler and the laying of the wrap. */
function holdTimeOf(
  work: Workbook,
  { putty, filler, laminate }: CureDesigns,
  mixes: MixDesigns,
  rolls: RollsDesign,
): Time {
  const waits = laminate.wait + (putty === 'none' ? 0 : putty.wait) + (filler === 'none' ? 0 : filler.wait);
  return (waits + placingTime(work, mixes) + (rolls.wrapTime ?? 0)) as Time;
}

import { firstCoolHour, highestReading, warmestForWorkingTime } from '../../cure/index.js';
import { step } from '../../formula/index.js';
import type { Temperature, Time } from '../../quantity/index.js';
import { practice } from '../../rules/index.js';
import { longestCharge, timeToLay } from '../../wrap/index.js';
import type { Crew } from '../case/case.js';
import type { RollRemedies } from '../design/design-work.js';
import { trial, type Workbook } from '../job/workbook.js';
import { thermometerErrorOf } from '../mix-and-cure/steel-temperatures.js';
import type { Charge } from './charge.js';

/** What makes a charge fit its working time; what cannot is left out. */
export function remediesFor(
  work: Workbook,
  crew: Crew,
  { charge }: Charge,
  { chargeTime, allowedTime }: { readonly chargeTime: Time; readonly allowedTime: Time },
): RollRemedies {
  const { recorder } = work;
  const soakTime = crew.soakTime ?? (0 as Time);
  const mixingTime = charge === 'batch' ? practice.mixingTime.value : (0 as Time);
  const { layingSpeed } = crew;
  const remedies: { -readonly [K in keyof RollRemedies]: RollRemedies[K] } = {};
  const shorter = trial(work, 'shorter charge', () =>
    step(recorder, 'wrap/longest-charge', longestCharge, {
      workingTime: allowedTime,
      mixingTime,
      soakTime,
      layingSpeed,
      crews: 1,
    }),
  ).result;
  if (shorter !== undefined) remedies.longestCharge = shorter;
  const coolerThan = coolEnough(work, chargeTime);
  if (coolerThan === undefined) return remedies;
  remedies.coolerThan = coolerThan;
  const coolerHour = firstHourAt(work, coolerThan);
  if (coolerHour !== undefined) remedies.coolerHour = coolerHour;
  return remedies;
}

/** The warmest that still gives the time, from the coldest that cures to the hottest tested. */
function coolEnough(work: Workbook, needed: Time): Temperature | undefined {
  const { cure } = work.case.laminate;
  if (cure.mechanism === 'moisture') return undefined;
  // Of each working time only its share counts, of the maker's at the reference temperature as of every other.
  const share = practice.shareOfWorkingTime.value;
  const byMaker = { workingTime: cure.workingTime, share };
  const time = step(work.recorder, 'wrap/time-to-lay', timeToLay, byMaker, 'at the reference temperature');
  const warmest = trial(work, 'cooler steel', () =>
    step(work.recorder, 'cure/warmest-for-working-time', warmestForWorkingTime, {
      time,
      neededTime: needed,
      minimumTemperature: cure.minimumTemperature,
      mechanism: cure.mechanism,
      referenceTemperature: cure.referenceTemperature,
      activationEnergy: cure.activationEnergy,
      testedFrom: cure.testedFrom,
      testedTo: cure.testedTo,
    }),
  ).result?.temperature;
  if (warmest === undefined) return undefined;
  const error = thermometerErrorOf(work.case.site);
  return step(work.recorder, 'cure/highest-reading', highestReading, { warmest, error });
}

function firstHourAt(work: Workbook, limit: Temperature): Time | undefined {
  const { forecast } = work.case.site;
  if (forecast === undefined) return undefined;
  return trial(work, 'cooler hour', () =>
    step(work.recorder, 'cure/first-cool-hour', firstCoolHour, { forecast, limit }),
  ).result;
}

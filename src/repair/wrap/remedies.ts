import { firstCoolHour, warmestForWorkingTime } from '../../cure/index.js';
import { step } from '../../formula/index.js';
import type { Temperature, Time } from '../../quantity/index.js';
import { practice } from '../../rules/index.js';
import { crewsForCharge, longestCharge } from '../../wrap/index.js';
import type { Crew } from '../case/case.js';
import type { RollRemedies } from '../design/design-work.js';
import { trial, type Workbook } from '../job/workbook.js';
import type { Charge } from './charge.js';

/** What makes a charge fit its working time; what cannot is left out. */
export function remediesFor(
  work: Workbook,
  crew: Crew,
  { charge, chargeLength }: Charge,
  { chargeTime, workingTime }: { readonly chargeTime: Time; readonly workingTime: Time },
): RollRemedies {
  const { recorder } = work;
  const soakTime = crew.soakTime ?? (0 as Time);
  const mixingTime = charge === 'batch' ? practice.mixingTime.value : (0 as Time);
  const { layingSpeed } = crew;
  const remedies: { -readonly [K in keyof RollRemedies]: RollRemedies[K] } = {};
  const shorter = trial(work, 'shorter charge', () =>
    step(recorder, 'wrap/longest-charge', longestCharge, {
      workingTime,
      mixingTime,
      soakTime,
      layingSpeed,
      crews: crew.crews,
    }),
  ).result;
  if (shorter !== undefined) remedies.longestCharge = shorter;
  const crews = trial(work, 'more crews', () =>
    step(recorder, 'wrap/crews-for-charge', crewsForCharge, {
      chargeLength,
      workingTime,
      mixingTime,
      soakTime,
      layingSpeed,
    }),
  ).result;
  if (crews !== undefined) remedies.crews = crews;
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
  return trial(work, 'cooler steel', () =>
    step(work.recorder, 'cure/warmest-for-working-time', warmestForWorkingTime, {
      time: cure.workingTime,
      neededTime: needed,
      minimumTemperature: cure.minimumTemperature,
      mechanism: cure.mechanism,
      referenceTemperature: cure.referenceTemperature,
      activationEnergy: cure.activationEnergy,
      testedFrom: cure.testedFrom,
      testedTo: cure.testedTo,
    }),
  ).result?.temperature;
}

function firstHourAt(work: Workbook, limit: Temperature): Time | undefined {
  const { forecast } = work.case.site;
  if (forecast === undefined) return undefined;
  return trial(work, 'cooler hour', () =>
    step(work.recorder, 'cure/first-cool-hour', firstCoolHour, { forecast, limit }),
  ).result;
}

import { cureWait, cureWaitLeavesTestedSpan, workingTime, workingTimeLeavesTestedSpan } from '../../cure/index.js';
import { step } from '../../formula/index.js';
import type { Temperature, Time } from '../../quantity/index.js';
import type { ReactionCureSheet } from '../case/case.js';
import type { CureDesign } from '../design/design-work.js';
import { assumeWord, type Workbook, warnCrew } from '../job/workbook.js';
import type { CureLaw } from '../timeline/cure-law.js';
import type { CureUse } from '../timeline/duration.js';
import { stepsOf } from '../timeline/steps-of.js';
import { outsideTestedSpan } from './cure-warnings.js';
import { steelBehindReading, steelIsForeseen, warmestForResin } from './steel-temperatures.js';

/** Two parts that react: its working time at the warmest that it may meet, and the law of its wait. */
export function reactionCure(
  work: Workbook,
  use: CureUse,
  material: string,
  cure: ReactionCureSheet,
): CureDesign | undefined {
  if (cure.activationEnergy === undefined) {
    assumeWord(
      work,
      `activation energy of ${material}`,
      '40, 50 and 60 kJ/mol side by side',
      'chosen',
      'the maker gives none: the longest wait and the shortest working time of the three are taken',
    );
  }
  const usable = workingTimeOf(work, use, material, cure);
  const law = lawOf(work, use, material, cure);
  return law === undefined ? undefined : { material, workingTime: usable, law };
}

function workingTimeOf(work: Workbook, use: CureUse, material: string, cure: ReactionCureSheet): Time {
  const input = {
    time: cure.workingTime,
    temperature: warmestForResin(work),
    mechanism: cure.mechanism,
    referenceTemperature: cure.referenceTemperature,
    activationEnergy: cure.activationEnergy,
    testedFrom: cure.testedFrom,
    testedTo: cure.testedTo,
  };
  if (workingTimeLeavesTestedSpan(input))
    warnCrew(work, stepsOf[use].laid, outsideTestedSpan(`working time of ${material}`));
  return step(work.recorder, 'cure/working-time', workingTime, input).workingTime;
}

/** Where the hours to come are foreseen, the wait hangs on the hour at which it is laid: that is the timeline's. */
function lawOf(work: Workbook, use: CureUse, material: string, cure: ReactionCureSheet): CureLaw | undefined {
  const { mechanism, referenceTemperature, activationEnergy, testedFrom, testedTo, minimumTemperature } = cure;
  const { site } = work.case;
  if (steelIsForeseen(site)) {
    return {
      sort: 'over the history',
      mechanism,
      requiredTime: cure.cureTime,
      referenceTemperature,
      minimumTemperature,
      testedFrom,
      testedTo,
      activationEnergy,
    };
  }
  const temperature = steelBehindReading(work);
  if (temperature < minimumTemperature) return tooCold(work, material, temperature, minimumTemperature);
  const input = {
    time: cure.cureTime,
    temperature,
    minimumTemperature,
    mechanism,
    referenceTemperature,
    activationEnergy,
    testedFrom,
    testedTo,
  };
  if (cureWaitLeavesTestedSpan(input)) warnCrew(work, stepsOf[use].wait, outsideTestedSpan(`cure of ${material}`));
  return { sort: 'same at every hour', wait: step(work.recorder, 'cure/cure-wait', cureWait, input).wait };
}

function tooCold(work: Workbook, material: string, found: Temperature, least: Temperature): undefined {
  work.reasons.push({
    text: `${material} does not cure on steel this cold: heat the pipe, or wait for a warmer day`,
    found: { name: 'steel behind the error of its thermometer', kind: 'temperature', value: found },
    limit: { name: 'lowest temperature at which it cures', kind: 'temperature', value: least },
  });
}

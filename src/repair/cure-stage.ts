import {
  cureWait,
  cureWaitOverHistory,
  historyWaitHasUncreditedTime,
  historyWaitLeavesTestedSpan,
  makersTime,
  waitLeavesTestedSpan,
  workingTime,
  workingTimeLeavesTestedSpan,
} from '../cure/index.js';
import { decide, heading, step } from '../formula/index.js';
import type { Temperature, Time } from '../quantity/index.js';
import type { CureSheet, MoistureCureSheet, ReactionCureSheet } from './case.js';
import type { CureDesign } from './design.js';
import { assumeWord, attempt, type Workbook, warn } from './workbook.js';

/** How long a material can be worked and how long it must wait, at the temperatures of this site. */
export function planCure(work: Workbook, material: string, cure: CureSheet): CureDesign | undefined {
  heading(work.recorder, `Times of ${material}`);
  return cure.mechanism === 'moisture' ? byMakersRows(work, material, cure) : byReaction(work, material, cure);
}

function byReaction(work: Workbook, material: string, cure: ReactionCureSheet): CureDesign | undefined {
  const { recorder, case: repairCase } = work;
  const { pipeTemperature, airTemperature, history } = repairCase.site;
  const { referenceTemperature, activationEnergy, testedFrom, testedTo, minimumTemperature } = cure;
  const span = {
    referenceTemperature,
    activationEnergy,
    testedFrom,
    testedTo,
    mechanism: 'two-part reaction',
  } as const;
  if (activationEnergy === undefined) {
    assumeWord(
      work,
      `activation energy of ${material}`,
      '40, 50 and 60 kJ/mol side by side',
      'chosen',
      'the maker gives none: the longest wait and the shortest working time of the three are taken',
    );
  }
  const warmest = Math.max(pipeTemperature, airTemperature) as Temperature;
  const working = { ...span, time: cure.workingTime, temperature: warmest };
  const usable = step(recorder, workingTime, working);
  if (workingTimeLeavesTestedSpan(working)) warn(work, outside(`working time of ${material}`));
  const wait = attempt(work, `cure of ${material}`, (): Time => {
    if (history !== undefined) {
      const input = { ...span, steps: history, requiredTime: cure.cureTime, minimumTemperature };
      if (historyWaitLeavesTestedSpan(input)) warn(work, outside(`cure of ${material}`));
      if (historyWaitHasUncreditedTime(input)) {
        warn(work, `Part of the temperature history is too cold for ${material} to cure: it counts nothing.`);
      }
      return step(recorder, cureWaitOverHistory, input).wait;
    }
    const input = { ...span, time: cure.cureTime, temperature: pipeTemperature, minimumTemperature };
    const answer = step(recorder, cureWait, input).wait;
    if (waitLeavesTestedSpan(input)) warn(work, outside(`cure of ${material}`));
    return answer;
  });
  return wait === undefined ? undefined : { material, wait, workingTime: usable.workingTime };
}

function byMakersRows(work: Workbook, material: string, cure: MoistureCureSheet): CureDesign | undefined {
  const { recorder, case: repairCase } = work;
  const { pipeTemperature: temperature, relativeHumidity: humidity } = repairCase.site;
  decide(
    recorder,
    `times of ${material} from the maker's own rows`,
    'a moisture-cured system is never shifted by temperature',
  );
  return attempt(work, `cure of ${material}`, () => {
    const at = { temperature, humidity };
    const wait = step(recorder, makersTime, {
      ...at,
      rows: cure.rows.map((row) => ({ temperature: row.temperature, humidity: row.humidity, time: row.cureTime })),
      purpose: 'wait',
    });
    const working = step(recorder, makersTime, {
      ...at,
      rows: cure.rows.map((row) => ({ temperature: row.temperature, humidity: row.humidity, time: row.workingTime })),
      purpose: 'working time',
    });
    return { material, wait: wait.time, workingTime: working.time };
  });
}

function outside(what: string): string {
  return `The ${what} is shifted beyond the temperatures at which its maker tested: treat it as a guess and prove it on a trial batch.`;
}

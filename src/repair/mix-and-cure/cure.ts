import {
  cureWait,
  cureWaitLeavesTestedSpan,
  cureWaitOverHistory,
  cureWaitOverHistoryHasUncreditedTime,
  cureWaitOverHistoryLeavesTestedSpan,
  makersTime,
  type TemperatureStep,
  workingTime,
  workingTimeLeavesTestedSpan,
} from '../../cure/index.js';
import { decide, heading, step } from '../../formula/index.js';
import type { Temperature, Time } from '../../quantity/index.js';
import type { CureSheet, MoistureCureSheet, ReactionCureSheet, Site } from '../case/case.js';
import type { CureDesign, CureDesigns } from '../design/design.js';
import type { SealDesign } from '../design/design-work.js';
import { type Open, open } from '../job/stage.js';
import { assumeWord, attempt, need, trial, type Workbook, warn } from '../job/workbook.js';
import { afterTime } from './time-steps.js';

/** Times of all that cures on the pipe; every material is looked at, so that the reader learns of all that is missing. */
export function planCures(work: Workbook, { seal }: { seal: SealDesign | 'none' }): CureDesigns | Open {
  const { case: repairCase } = work;
  const { filler: asked, laminate: system } = repairCase;
  const putty =
    seal === 'none' || repairCase.seal === undefined
      ? 'none'
      : planCure(work, repairCase.seal.putty.name, repairCase.seal.putty.cure);
  const filler = asked === 'none' ? 'none' : planCure(work, asked.name, asked.cure);
  const fillerWait = filler === undefined || filler === 'none' ? undefined : filler.wait;
  const laminate = planCure(work, system.name, system.cure, fillerWait);
  if (putty === undefined || filler === undefined || laminate === undefined) return open;
  return { putty, filler, laminate };
}

/**
 * How long a material can be worked and how long it must wait, at the temperatures of this site.
 *
 * @param startAfter time from the start of the history until this material is laid
 */
export function planCure(
  work: Workbook,
  material: string,
  cure: CureSheet,
  startAfter = 0 as Time,
): CureDesign | undefined {
  heading(work.recorder, `Times of ${material}`);
  return cure.mechanism === 'moisture'
    ? byMakersRows(work, material, cure)
    : byReaction(work, material, cure, startAfter);
}

function byReaction(
  work: Workbook,
  material: string,
  cure: ReactionCureSheet,
  startAfter: Time,
): CureDesign | undefined {
  const { recorder, case: repairCase } = work;
  const history = steelOverTime(repairCase.site);
  if (cure.activationEnergy === undefined) {
    assumeWord(
      work,
      `activation energy of ${material}`,
      '40, 50 and 60 kJ/mol side by side',
      'chosen',
      'the maker gives none: the longest wait and the shortest working time of the three are taken',
    );
  }
  const warmest = Math.max(...temperaturesOf(repairCase.site)) as Temperature;
  const working = { ...shiftOf(cure), time: cure.workingTime, temperature: warmest };
  const usable = step(recorder, 'cure/working-time', workingTime, working);
  if (workingTimeLeavesTestedSpan(working)) warn(work, outside(`working time of ${material}`));
  const wait = waitOf(work, material, cure, history === undefined ? undefined : afterTime(history, startAfter));
  return wait === undefined ? undefined : { material, wait, workingTime: usable.workingTime };
}

/** What the shift of a time to another temperature rests on. */
function shiftOf({ mechanism, referenceTemperature, activationEnergy, testedFrom, testedTo }: ReactionCureSheet) {
  return { mechanism, referenceTemperature, activationEnergy, testedFrom, testedTo };
}

function waitOf(
  work: Workbook,
  material: string,
  cure: ReactionCureSheet,
  steps: readonly TemperatureStep[] | undefined,
): Time | undefined {
  const { recorder, case: repairCase } = work;
  const { pipeTemperature } = repairCase.site;
  const { minimumTemperature } = cure;
  const input = { ...shiftOf(cure), minimumTemperature };
  const what = `cure of ${material}`;
  if (steps === undefined) {
    if (pipeTemperature < minimumTemperature) return tooCold(work, material, pipeTemperature, minimumTemperature);
    const constant = { ...input, time: cure.cureTime, temperature: pipeTemperature };
    if (cureWaitLeavesTestedSpan(constant)) warn(work, outside(what));
    return step(recorder, 'cure/cure-wait', cureWait, constant).wait;
  }
  if (steps.length === 0) return historyTooShort(work, material);
  const varying = { ...input, steps, requiredTime: cure.cureTime };
  if (cureWaitOverHistoryLeavesTestedSpan(varying)) warn(work, outside(what));
  if (cureWaitOverHistoryHasUncreditedTime(varying)) {
    warn(work, `Part of the temperature history is too cold for ${material} to cure: it counts nothing.`);
  }
  const { result, refusals } = trial(
    work,
    what,
    () => step(recorder, 'cure/cure-wait-over-history', cureWaitOverHistory, varying).wait,
  );
  return refusals.length > 0 ? historyTooShort(work, material) : result;
}

function tooCold(work: Workbook, material: string, found: Temperature, least: Temperature): undefined {
  work.reasons.push({
    text: `${material} does not cure on steel this cold: heat the pipe, or wait for a warmer day`,
    found: { name: 'temperature of the steel', kind: 'temperature', value: found },
    limit: { name: 'lowest temperature at which it cures', kind: 'temperature', value: least },
  });
}

function historyTooShort(work: Workbook, material: string): undefined {
  return need(
    work,
    'site.history',
    `the temperature history ends before ${material} has cured: it has to reach further, or be warmer`,
    'the weather forecast, or whoever heats the pipe',
  );
}

/** The steel over the hours of the cure: as the case foresees it, else as the forecast does. */
function steelOverTime({ history, forecast }: Site): readonly TemperatureStep[] | undefined {
  return history ?? forecast?.map(({ duration, pipeTemperature }) => ({ duration, temperature: pipeTemperature }));
}

/** Every temperature that the resin may meet. */
function temperaturesOf(site: Site): number[] {
  const { pipeTemperature, airTemperature, history = [], forecast = [] } = site;
  return [
    pipeTemperature,
    airTemperature,
    ...history.map(({ temperature }) => temperature),
    ...forecast.flatMap((step) => [step.pipeTemperature, step.airTemperature]),
  ];
}

function byMakersRows(work: Workbook, material: string, cure: MoistureCureSheet): CureDesign | undefined {
  const { recorder, case: repairCase } = work;
  const { site } = repairCase;
  const humidity = site.relativeHumidity;
  const steel = [site.pipeTemperature, ...(steelOverTime(site) ?? []).map(({ temperature }) => temperature)];
  decide(
    recorder,
    `times of ${material} from the maker's own rows`,
    'a moisture-cured system is never shifted by temperature',
  );
  return attempt(work, `cure of ${material}`, () => {
    const wait = step(recorder, 'cure/makers-time', makersTime, {
      temperature: Math.min(...steel) as Temperature,
      humidity,
      rows: cure.rows.map((row) => ({ temperature: row.temperature, humidity: row.humidity, time: row.cureTime })),
      purpose: 'wait',
    });
    const working = step(recorder, 'cure/makers-time', makersTime, {
      temperature: Math.max(...temperaturesOf(site)) as Temperature,
      humidity,
      rows: cure.rows.map((row) => ({ temperature: row.temperature, humidity: row.humidity, time: row.workingTime })),
      purpose: 'working time',
    });
    return { material, wait: wait.time, workingTime: working.time };
  });
}

function outside(what: string): string {
  return `The ${what} is shifted beyond the temperatures at which its maker tested: treat it as a guess and prove it on a trial batch.`;
}

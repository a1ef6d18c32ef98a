import { workingTime } from '../../cure/index.js';
import { countUp } from '../../numeric/index.js';
import type { Length, Temperature, Time } from '../../quantity/index.js';
import type { Crew, ReactionCureSheet, Site } from '../case/case.js';
import type {
  CureDesigns,
  ExtentDesign,
  LaminateDesign,
  MixDesigns,
  SheetDesign,
  TapeDesign,
} from '../design/design.js';
import type { RollDesign, RollRemedies, RollsDesign } from '../design/design-work.js';
import { type Workbook, warn } from '../job/workbook.js';
import { MIXING_TIME } from '../mix-and-cure/mix.js';

/** What the earlier stages say about the wrap. */
export interface RollDemand {
  readonly laminate: LaminateDesign;
  readonly extent: ExtentDesign;
  readonly wrap: TapeDesign | SheetDesign;
  readonly cures: CureDesigns;
  readonly mixes: MixDesigns;
}

type Charge = Pick<RollsDesign, 'charge' | 'chargeLength'>;

/** What has to be laid before it gels: a batch of resin, else the roll or band that brings its own. */
export function chargeOf(
  { case: repairCase }: Workbook,
  { wrap, mixes: { laminateResin: mix } }: RollDemand,
  rolls: readonly RollDesign[],
): Charge {
  const length = wrap.form === 'tape' ? wrap.tapeLength : wrap.sheetLength;
  if (repairCase.resin !== 'none') {
    return { charge: 'batch', chargeLength: (length / batchesOf(mix)) as Length };
  }
  const longest = Math.max(0, ...rolls.map((roll) => roll.length)) || Math.min(length, repairCase.wrap.rollLength);
  return { charge: wrap.form === 'tape' ? 'roll' : 'band', chargeLength: longest as Length };
}

/** A wrap that brings its own resin counts as one batch. */
function batchesOf(mix: MixDesigns['laminateResin']): number {
  return mix === 'none' ? 1 : mix.batches;
}

/** Crews that work side by side share a roll: it is cut to as many lengths. */
export function layingTime({ layingSpeed, crews, soakTime = 0 as Time }: Crew, length: Length): Time {
  return (soakTime + length / (layingSpeed * crews)) as Time;
}

/** How long the wrap takes this crew, and whether each charge fits its working time. */
export function timesOf(
  work: Workbook,
  crew: Crew,
  { mixes: { laminateResin: mix }, cures: { laminate: times }, wrap }: RollDemand,
  rolls: readonly RollDesign[],
  { charge, chargeLength }: Charge,
): Partial<RollsDesign> {
  const overhead = charge === 'batch' ? MIXING_TIME + (crew.soakTime ?? 0) : (crew.soakTime ?? 0);
  const chargeTime = (overhead + chargeLength / (crew.layingSpeed * crew.crews)) as Time;
  const length = wrap.form === 'tape' ? wrap.tapeLength : wrap.sheetLength;
  const mixing = charge === 'batch' ? batchesOf(mix) * MIXING_TIME : 0;
  const wrapTime = (Math.max(1, rolls.length) * (crew.soakTime ?? 0) +
    length / (crew.layingSpeed * crew.crews) +
    mixing) as Time;
  const fits = chargeTime <= times.workingTime;
  if (fits) return { chargeTime, wrapTime, fits };
  warn(
    work,
    `A ${charge} takes longer to lay than its working time at this temperature: it gels before it lies. See the remedies in the plan.`,
  );
  const remedies = remediesFor(work, crew, { chargeTime, chargeLength, overhead, available: times.workingTime });
  return { chargeTime, wrapTime, fits, remedies };
}

interface TooSlow {
  readonly chargeTime: Time;
  readonly chargeLength: Length;
  readonly overhead: number;
  readonly available: Time;
}

function remediesFor(work: Workbook, crew: Crew, slow: TooSlow): RollRemedies {
  const { cure } = work.case.laminate;
  const { site } = work.case;
  const left = slow.available - slow.overhead;
  const byHand =
    left <= 0
      ? {}
      : {
          longestCharge: (left * crew.layingSpeed * crew.crews) as Length,
          crews: countUp(slow.chargeLength / (left * crew.layingSpeed)),
        };
  const coolerThan = cure.mechanism === 'moisture' ? undefined : coolEnough(cure, slow.chargeTime);
  const coolerHour = coolerThan === undefined ? undefined : firstHourAt(site, coolerThan);
  return {
    ...byHand,
    ...(coolerThan === undefined ? {} : { coolerThan }),
    ...(coolerHour === undefined ? {} : { coolerHour }),
  };
}

/** The warmest that still gives the time: halved down between the coldest that cures and the hottest tested. */
function coolEnough(cure: ReactionCureSheet, needed: Time): Temperature | undefined {
  const { referenceTemperature, activationEnergy, testedFrom, testedTo, minimumTemperature } = cure;
  const enough = (temperature: number): boolean =>
    workingTime({
      time: cure.workingTime,
      temperature: temperature as Temperature,
      mechanism: 'two-part reaction',
      referenceTemperature,
      activationEnergy,
      testedFrom,
      testedTo,
    }).workingTime >= needed;
  let [cool, hot] = [minimumTemperature as number, Math.max(testedTo, minimumTemperature)];
  if (!enough(cool)) return undefined;
  for (let halving = 0; halving < 60; halving++) {
    const middle = (cool + hot) / 2;
    if (enough(middle)) cool = middle;
    else hot = middle;
  }
  return cool as Temperature;
}

function firstHourAt({ forecast = [] }: Site, limit: Temperature): Time | undefined {
  let from = 0;
  for (const { duration, pipeTemperature, airTemperature } of forecast) {
    if (Math.max(pipeTemperature, airTemperature) <= limit) return from as Time;
    from += duration;
  }
  return undefined;
}

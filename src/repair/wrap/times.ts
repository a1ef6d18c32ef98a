import { step } from '../../formula/index.js';
import type { Length, Time } from '../../quantity/index.js';
import { practice } from '../../rules/index.js';
import { layingTime } from '../../wrap/index.js';
import type { Crew } from '../case/case.js';
import type { RollDesign } from '../design/design-work.js';
import type { Workbook } from '../job/workbook.js';

/** What the crew does to a length of tape or sheet besides laying it. */
interface Handled {
  readonly length: Length;
  readonly soakings: number;
  readonly batches: number;
  /** One for a helix of tape and for every charge: neither is ever divided. */
  readonly crews: number;
}

/** How long this crew takes for a length of tape or sheet. */
export function timeFor(
  work: Workbook,
  crew: Crew,
  { length, soakings, batches, crews }: Handled,
  purpose: string,
): Time {
  return step(
    work.recorder,
    'wrap/laying-time',
    layingTime,
    {
      length,
      layingSpeed: crew.layingSpeed,
      crews,
      soakings,
      soakTime: crew.soakTime ?? (0 as Time),
      batches,
      mixingTime: practice.mixingTime.value,
    },
    purpose,
  );
}

/** A roll that was timed. */
type Timed = RollDesign & { readonly time: Time };

/** The rolls, each with the time that it takes; all but the last are of one length, and so of one time. */
export function timedRolls(work: Workbook, crew: Crew, rolls: readonly RollDesign[]): RollDesign[] {
  const timed: Timed[] = [];
  let before: Timed | undefined;
  for (const { roll, length, endsInPass, endsAt } of rolls) {
    const time =
      before?.length === length
        ? before.time
        : timeFor(
            work,
            crew,
            { length, soakings: 1, batches: 0, crews: 1 },
            before === undefined ? 'one roll or band' : 'the last roll',
          );
    before = { roll, length, endsInPass, endsAt, time };
    timed.push(before);
  }
  return timed;
}

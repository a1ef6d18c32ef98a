import { step } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';
import { chargeLength } from '../../wrap/index.js';
import type { SheetDesign, TapeDesign } from '../design/design.js';
import type { MixDesigns, RollDesign, RollsDesign } from '../design/design-work.js';
import type { Workbook } from '../job/workbook.js';

/** What has to be laid within one working time, and how long it is. */
export type Charge = Pick<RollsDesign, 'charge' | 'chargeLength'>;

/** What has to be laid before it gels: a batch of resin, else the roll or band that brings its own. */
export function chargeOf(
  work: Workbook,
  wrap: TapeDesign | SheetDesign,
  mix: MixDesigns['laminateResin'],
  rolls: readonly RollDesign[],
): Charge {
  const length = lengthOf(wrap);
  if (mix !== 'none') {
    const toABatch = { length, charges: mix.batches };
    return { charge: 'batch', chargeLength: step(work.recorder, 'wrap/charge-length', chargeLength, toABatch) };
  }
  // The outermost turn of sheet is the longest; where rolls of tape are too many to list, a whole one is known all the same.
  let longest = 0 as Length;
  for (const roll of rolls) longest = Math.max(longest, roll.length) as Length;
  if (rolls.length === 0) longest = Math.min(length, work.case.wrap.rollLength) as Length;
  return { charge: wrap.form === 'tape' ? 'roll' : 'band', chargeLength: longest };
}

/** Tape or sheet of the whole wrap. */
export function lengthOf(wrap: TapeDesign | SheetDesign): Length {
  return wrap.form === 'tape' ? wrap.tapeLength : wrap.sheetLength;
}

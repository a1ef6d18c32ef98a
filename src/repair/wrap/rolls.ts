import { heading, step } from '../../formula/index.js';
import { reaches } from '../../numeric/index.js';
import { exactly, line, roundedDown } from '../../quantity/index.js';
import { practice } from '../../rules/index.js';
import { wrapEnds } from '../../wrap/index.js';
import type { TapeStock } from '../case/case.js';
import type { ExtentDesign, LaminateDesign, SheetDesign, TapeDesign } from '../design/design.js';
import type { CureDesigns, MixDesigns, RollsDesign } from '../design/design-work.js';
import { type Workbook, warn, warnCrew } from '../job/workbook.js';
import { allowedTimeOf } from '../mix-and-cure/allowed-time.js';
import { chargeOf, lengthOf } from './charge.js';
import type { Laid } from './laid.js';
import { layBands } from './lay-bands.js';
import { layTape } from './lay-tape.js';
import { remediesFor } from './remedies.js';
import { timedRolls, timeFor } from './times.js';

/** What the earlier stages say about the wrap. */
interface RollDemand {
  readonly laminate: LaminateDesign;
  readonly extent: ExtentDesign;
  readonly wrap: TapeDesign | SheetDesign;
  readonly cures: CureDesigns;
  readonly mixes: MixDesigns;
}

/** Where the wrap starts and ends, pass by pass and roll by roll, and whether the crew can lay each in time. */
export function planRolls(work: Workbook, demand: RollDemand): RollsDesign {
  heading(work.recorder, 'Rolls');
  const { extent, wrap, cures, mixes } = demand;
  const laid = layWrap(work, demand);
  const ends = step(work.recorder, 'wrap/wrap-ends', wrapEnds, {
    laidLength: laid.length,
    defectLength: extent.defectLength,
  });
  if (ends.beyondDefect < practice.wrapBeforeDefect.value) {
    warn(
      work,
      line(
        'The wrap begins less than {0} before the defect, where the trade begins it; the design does not ask for more.',
        roundedDown('wrap before the defect', 'length', practice.wrapBeforeDefect.value),
      ),
    );
  }
  const charge = chargeOf(work, wrap, mixes.laminateResin, laid.rolls);
  const { workingTime } = cures.laminate;
  const allowedTime = allowedTimeOf(work, workingTime, 'laying');
  const rolls: { -readonly [K in keyof RollsDesign]: RollsDesign[K] } = {
    start: ends.start,
    end: ends.end,
    beforeDefect: ends.beyondDefect,
    stagger: laid.stagger,
    passes: laid.passes,
    rolls: laid.rolls,
    charge: charge.charge,
    chargeLength: charge.chargeLength,
    workingTime,
    allowedTime,
  };
  const { crew } = work.case;
  if (crew === undefined) return rolls;
  const batches = mixes.laminateResin === 'none' ? 0 : mixes.laminateResin.batches;
  rolls.rolls = timedRolls(work, crew, laid.rolls);
  const chargeTime = timeFor(
    work,
    crew,
    { length: charge.chargeLength, soakings: 1, batches: charge.charge === 'batch' ? 1 : 0, crews: 1 },
    `one ${charge.charge}`,
  );
  rolls.chargeTime = chargeTime;
  rolls.wrapTime = timeFor(
    work,
    crew,
    {
      length: lengthOf(wrap),
      soakings: soakingsOf(wrap, laid),
      batches,
      crews: wrap.form === 'tape' ? 1 : crew.crews,
    },
    'the whole wrap',
  );
  rolls.fits = reaches(allowedTime, chargeTime);
  if (rolls.fits) return rolls;
  warnCrew(
    work,
    'wrap',
    line(
      `A ${charge.charge} takes longer to lay than {0} of its working time at this temperature: it may gel before it lies. See the remedies in the plan.`,
      exactly('share', 'ratio', practice.shareOfWorkingTime.value),
    ),
  );
  rolls.remedies = remediesFor(work, crew, charge, { chargeTime, allowedTime });
  return rolls;
}

/** A roll, or a piece of sheet, is soaked before it is laid; where they are too many to list, as many as were ordered. */
function soakingsOf(wrap: TapeDesign | SheetDesign, { rolls }: Laid): number {
  return rolls.length === 0 ? wrap.rolls : rolls.length;
}

function layWrap(work: Workbook, { laminate, extent, wrap }: RollDemand): Laid {
  if (wrap.form === 'sheet') return layBands(work, wrap, laminate, extent);
  // A wrap of tape was planned from a stock of tape.
  return layTape(work, work.case.wrap as TapeStock, wrap, laminate, extent);
}

import { decide, heading } from '../../formula/index.js';
import { countUp } from '../../numeric/index.js';
import type { Length, Ratio } from '../../quantity/index.js';
import { axialTapeWidth, type TapePass, tapePlan } from '../../wrap/index.js';
import type { ExtentDesign, SheetDesign, TapeDesign } from '../design/design.js';
import type { PassDesign, RollDesign, RollsDesign } from '../design/design-work.js';
import { type Workbook, warn } from '../job/workbook.js';
import { chargeOf, layingTime, type RollDemand, timesOf } from './roll-times.js';
import { SIDE_LAP } from './wrap.js';

/** Rolls beyond this many are not listed one by one: no crew follows such a list. */
const MOST_ROLLS = 500;

/** The trade begins to wrap about this far before a leak. */
const PRACTICE_BEFORE = 0.1 as Length;

/** Where the wrap starts and ends, pass by pass and roll by roll, and whether the crew can lay each in time. */
export function planRolls(work: Workbook, demand: RollDemand): RollsDesign {
  heading(work.recorder, 'Rolls');
  const { extent, wrap } = demand;
  const laid = wrap.form === 'tape' ? layTape(work, wrap, demand) : layBands(work, wrap, extent);
  const charge = chargeOf(work, demand, laid.rolls);
  const beforeDefect = ((laid.length - extent.defectLength) / 2) as Length;
  if (beforeDefect < PRACTICE_BEFORE) {
    warn(
      work,
      'The wrap begins less than 100 mm before the defect, where the trade begins it; the design does not ask for more.',
    );
  }
  const { crew } = work.case;
  const rolls = laid.rolls.map((roll) =>
    crew === undefined ? roll : { ...roll, time: layingTime(crew, roll.length) },
  );
  const timed = crew === undefined ? {} : timesOf(work, crew, demand, rolls, charge);
  return {
    start: (-laid.length / 2) as Length,
    end: (laid.length / 2) as Length,
    beforeDefect,
    stagger: laid.stagger,
    passes: laid.passes,
    rolls,
    ...charge,
    workingTime: demand.cures.laminate.workingTime,
    ...timed,
  };
}

interface Laid {
  readonly length: Length;
  readonly stagger: Length;
  readonly passes: readonly PassDesign[];
  readonly rolls: readonly RollDesign[];
}

function layTape(work: Workbook, wrap: TapeDesign, { laminate, extent }: RollDemand): Laid {
  const { wrap: stock, laminate: system } = work.case;
  const overlap = stock.form === 'tape' ? stock.overlap : (0 as Ratio);
  const { rows, overallLength } = tapePlan({
    outsideDiameter: laminate.wrappedDiameter,
    tapeWidth: stock.width,
    overlap,
    layerThickness: system.plyThickness,
    requiredLayers: laminate.plies,
    fullCountLength: wrap.fullCountLength,
  });
  const stagger = staggerOf(work, wrap, extent, rows.length);
  const passes: PassDesign[] = rows.map(({ pass, meanDiameter, advance, turns, tapeLength }) => {
    const half = overallLength / 2 - (pass - 1) * stagger;
    const forward = pass % 2 === 1;
    const closing = 2 * Math.PI * meanDiameter;
    const less = (2 * (pass - 1) * stagger) / advance;
    return {
      pass,
      direction: forward ? 'forward' : 'back',
      from: (forward ? -half : half) as Length,
      to: (forward ? half : -half) as Length,
      tapeLength: (closing + (tapeLength - closing) * (1 - less / turns)) as Length,
    };
  });
  return { length: overallLength, stagger, passes, rolls: rollsAlong(work, passes, rows, overlap) };
}

/**
 * What is left of the taper beyond the end bands is shared out among the passes: each starts and ends a step inside the
 * one below it, and the length that needs every layer keeps them all.
 */
function staggerOf(work: Workbook, wrap: TapeDesign, { taper, totalLength }: ExtentDesign, passes: number): Length {
  const fullLength = totalLength - 2 * taper;
  const free = Math.max(0, (wrap.fullCountLength - fullLength) / 2);
  if (passes < 2 || free < 1e-9) {
    decide(
      work.recorder,
      'all passes end together',
      'the end bands of one tape width carry fewer layers and are as long as the taper',
    );
    return 0 as Length;
  }
  decide(work.recorder, 'each pass ends a step inside the one below', 'the steps share out the taper');
  return (free / (passes - 1)) as Length;
}

/** Each roll is used up before the next is opened; the last one ends with the wrap. */
function rollsAlong(
  work: Workbook,
  passes: readonly PassDesign[],
  rows: readonly TapePass[],
  overlap: Ratio,
): RollDesign[] {
  const { width: tapeWidth, rollLength } = work.case.wrap;
  const total = passes.reduce((sum, { tapeLength }) => sum + tapeLength, 0);
  const count = countUp(total / rollLength);
  if (count > MOST_ROLLS) return [];
  let before = 0;
  let index = 0;
  return Array.from({ length: count }, (_, roll) => {
    const laid = Math.min((roll + 1) * rollLength, total);
    while (index < passes.length - 1 && before + (passes[index]?.tapeLength ?? 0) < laid) {
      before += passes[index]?.tapeLength ?? 0;
      index += 1;
    }
    const [pass, row] = [passes[index], rows[index]] as [PassDesign, TapePass];
    return {
      roll: roll + 1,
      length: (laid - roll * rollLength) as Length,
      endsInPass: pass.pass,
      endsAt: positionIn(pass, row, tapeWidth, overlap, laid - before),
    };
  });
}

/** The leading edge of the tape after so much of it: a hoop turn, the helix, a hoop turn. */
function positionIn(pass: PassDesign, row: TapePass, tapeWidth: Length, overlap: Ratio, laid: number): Length {
  const { meanDiameter } = row;
  const closing = Math.PI * meanDiameter;
  const helix = pass.tapeLength - 2 * closing;
  const band = axialTapeWidth({ tapeWidth, overlap, meanDiameter });
  const travel = Math.abs(pass.to - pass.from) - band;
  const share = helix > 0 ? Math.min(1, Math.max(0, (laid - closing) / helix)) : 1;
  const way = pass.direction === 'forward' ? 1 : -1;
  return (pass.from + way * (band + share * travel)) as Length;
}

/** Bands of sheet side by side, each wound to its full count of layers before the next. */
function layBands(work: Workbook, wrap: SheetDesign, { totalLength, taper }: ExtentDesign): Laid {
  const { width } = work.case.wrap;
  const length = (wrap.sheetLength / wrap.bands) as Length;
  const listed = wrap.bands > MOST_ROLLS ? 0 : wrap.bands;
  const rolls = Array.from({ length: listed }, (_, band) => ({
    roll: band + 1,
    length,
    endsInPass: band + 1,
    endsAt: Math.min(-totalLength / 2 + (band + 1) * width - band * SIDE_LAP, totalLength / 2) as Length,
  }));
  const passes = rolls.map(({ roll, endsAt }) => ({
    pass: roll,
    direction: 'forward' as const,
    from: Math.max(-totalLength / 2, endsAt - width) as Length,
    to: endsAt,
    tapeLength: length,
  }));
  const stagger = (wrap.layers < 2 ? 0 : taper / (wrap.layers - 1)) as Length;
  return { length: totalLength, stagger, passes, rolls };
}

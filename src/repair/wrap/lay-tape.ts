import { decide, step } from '../../formula/index.js';
import type { Length, Ratio } from '../../quantity/index.js';
import { practice } from '../../rules/index.js';
import {
  freeTaper,
  rolls,
  rollsAlongTape,
  type StaggeredPass,
  type StaggeredPassesInput,
  stagger,
  staggeredPasses,
} from '../../wrap/index.js';
import type { TapeStock } from '../case/case.js';
import type { ExtentDesign, LaminateDesign, TapeDesign } from '../design/design.js';
import type { PassDesign, RollDesign } from '../design/design-work.js';
import type { Workbook } from '../job/workbook.js';
import type { Laid } from './laid.js';

/** Passes of tape to and fro, stepped inwards by what the end bands leave of the taper, and where each roll ends. */
export function layTape(
  work: Workbook,
  tape: TapeStock,
  wrap: TapeDesign,
  laminate: LaminateDesign,
  extent: ExtentDesign,
): Laid {
  const { recorder } = work;
  const { width, overlap, rollLength } = tape;
  const inward = staggerOf(work, wrap, extent);
  const winding: StaggeredPassesInput = {
    outsideDiameter: laminate.wrappedDiameter,
    tapeWidth: width,
    overlap,
    layerThickness: work.case.laminate.plyThickness,
    passes: wrap.passes,
    overallLength: wrap.overallLength,
    stagger: inward,
  };
  const laid = step(recorder, 'wrap/staggered-passes', staggeredPasses, winding);
  const used = step(
    recorder,
    'wrap/rolls',
    rolls,
    { length: laid.tapeLength, rollLength, waste: 0 as Ratio },
    'rolls used up one after another',
  );
  return {
    length: wrap.overallLength,
    stagger: inward,
    passes: passesOf(laid.rows),
    rolls: used.rolls > practice.mostRollsLaidOut.value ? [] : rollsOf(work, winding, rollLength),
  };
}

/**
 * What is left of the taper beyond the end bands is shared out among the passes: each starts and ends a step inside the
 * one below it, and the length that needs every layer keeps them all.
 */
function staggerOf(work: Workbook, wrap: TapeDesign, { taper, totalLength }: ExtentDesign): Length {
  const { recorder } = work;
  const free = step(recorder, 'wrap/free-taper', freeTaper, {
    totalLength,
    taper,
    fullCountLength: wrap.fullCountLength,
  });
  const inward = step(recorder, 'wrap/stagger', stagger, { taper: free, layers: wrap.passes });
  if (inward === 0) {
    decide(
      recorder,
      'all passes end together',
      'the end bands of one tape width carry fewer layers and are as long as the taper',
    );
  } else decide(recorder, 'each pass ends a step inside the one below', 'the steps share out the taper');
  return inward;
}

function passesOf(rows: readonly StaggeredPass[]): PassDesign[] {
  const passes: PassDesign[] = [];
  for (const { pass, direction, from, to, tapeLength } of rows) passes.push({ pass, direction, from, to, tapeLength });
  return passes;
}

/** Each roll is used up before the next is opened; the last one ends with the wrap. */
function rollsOf({ recorder }: Workbook, winding: StaggeredPassesInput, rollLength: Length): readonly RollDesign[] {
  return step(recorder, 'wrap/rolls-along-tape', rollsAlongTape, {
    outsideDiameter: winding.outsideDiameter,
    tapeWidth: winding.tapeWidth,
    overlap: winding.overlap,
    layerThickness: winding.layerThickness,
    passes: winding.passes,
    overallLength: winding.overallLength,
    stagger: winding.stagger,
    rollLength,
  }).rows;
}

import { heading, step } from '../../formula/index.js';
import type { Length, Ratio } from '../../quantity/index.js';
import {
  axialTapeWidth,
  finalLap,
  leadAngleSteep,
  leastOverlap,
  minimumLayers,
  minimumLayersWithoutMargin,
  passesSavedBySlightlyMoreOverlap,
  rolls,
  sheetPlan,
  tapePlan,
} from '../../wrap/index.js';
import type { SheetStock, TapeStock } from '../case/case.js';
import type { ExtentDesign, LaminateDesign, SheetDesign, TapeDesign } from '../design/design.js';
import { type Open, open } from '../job/stage.js';
import { assumeQuantity, type Workbook, warn } from '../job/workbook.js';

/** What the laminate asks of the wrap. */
export interface WrapDemand {
  /** Diameter that the first layer is laid on. */
  readonly outsideDiameter: Length;
  readonly plies: number;
  /** Length that must carry every ply. */
  readonly fullLength: Length;
  /** Length with both tapers. */
  readonly totalLength: Length;
}

/** How tape or sheet covers the repair, and how many rolls that takes. */
export function planWrap(
  work: Workbook,
  { laminate, extent }: { laminate: LaminateDesign; extent: ExtentDesign },
): TapeDesign | SheetDesign | Open {
  // A laminate that was refused as too thick is not wrapped: its plan would only mislead.
  if (work.reasons.length > 0) return open;
  heading(work.recorder, 'Wrap');
  const { wrap } = work.case;
  const demand: WrapDemand = {
    outsideDiameter: laminate.wrappedDiameter,
    plies: laminate.plies,
    fullLength: (extent.totalLength - 2 * extent.taper) as Length,
    totalLength: extent.totalLength,
  };
  const plan = wrap.form === 'tape' ? planTape(work, wrap, demand) : planSheet(work, wrap, demand);
  checkRoom(work, extent, laidLength(plan, extent));
  return plan;
}

/** Length of pipe that the wrap lies on, end bands included. */
export function laidLength(wrap: TapeDesign | SheetDesign, { totalLength }: ExtentDesign): Length {
  return wrap.form === 'tape' ? wrap.overallLength : totalLength;
}

/** Is there room beside the defect for all that is laid: overlap, taper and the end bands of the tape? */
function checkRoom(work: Workbook, extent: ExtentDesign, laidLength: Length): void {
  const { availableOverlap } = work.case.repair;
  if (availableOverlap === undefined) return;
  const needed = (Math.max(laidLength, extent.totalLength) - extent.defectLength) / 2;
  if (availableOverlap >= needed) return;
  work.reasons.push({
    text: 'there is not enough sound pipe beside the defect for the wrap with its ends',
    found: { name: 'sound pipe available', kind: 'length', value: availableOverlap },
    limit: { name: 'sound pipe needed', kind: 'length', value: needed },
  });
}

function planTape(work: Workbook, tape: TapeStock, demand: WrapDemand): TapeDesign {
  const { recorder } = work;
  const { outsideDiameter, plies } = demand;
  const plyThickness = work.case.laminate.plyThickness;
  const perPass = step(recorder, 'wrap/minimum-layers', minimumLayers, { overlap: tape.overlap });
  const band = step(recorder, 'wrap/axial-tape-width', axialTapeWidth, {
    tapeWidth: tape.width,
    overlap: tape.overlap,
    meanDiameter: (outsideDiameter + plyThickness) as Length,
  });
  // The end bands, one tape width on each side, carry fewer layers than the rest: they may form the tapers.
  const fullCountLength = Math.max(demand.fullLength, demand.totalLength - 2 * band) as Length;
  const plan = step(recorder, 'wrap/tape-plan', tapePlan, {
    outsideDiameter,
    tapeWidth: tape.width,
    overlap: tape.overlap,
    layerThickness: plyThickness,
    requiredLayers: plies,
    fullCountLength,
  });
  const waste = wasteOf(work, tape.waste);
  const order = step(recorder, 'wrap/rolls', rolls, {
    length: plan.tapeLength,
    rollLength: tape.rollLength,
    waste,
  });
  warnOfOverlap(work, tape, demand, perPass);
  return {
    form: 'tape',
    layersPerPass: perPass,
    passes: plan.passes,
    layers: plan.layers,
    fullCountLength,
    overallLength: plan.overallLength,
    tapeLength: plan.tapeLength,
    rolls: order.rolls,
    leftOnLastRoll: order.leftOnLastRoll,
  };
}

function warnOfOverlap(work: Workbook, tape: TapeStock, demand: WrapDemand, perPass: number): void {
  const { overlap, width: tapeWidth } = tape;
  if (minimumLayersWithoutMargin({ overlap })) {
    warn(
      work,
      `An overlap of ${percent(overlap)} is just what ${perPass} layers need: a hand that strays leaves a stripe of fewer. Order it as a minimum, with a tolerance upwards only.`,
    );
  }
  if (passesSavedBySlightlyMoreOverlap({ requiredLayers: demand.plies, overlap })) {
    const next = leastOverlap({ layers: perPass + 1 });
    warn(
      work,
      `An overlap of ${percent(next)} instead of ${percent(overlap)} would lay ${perPass + 1} layers in each pass instead of ${perPass}, and save at least one pass.`,
    );
  }
  if (leadAngleSteep({ tapeWidth, overlap, meanDiameter: demand.outsideDiameter })) {
    warn(
      work,
      'The tape is so wide for this pipe that it runs steeply: its stiffness round the pipe is no longer that of the ply. Take a narrower tape.',
    );
  }
}

/** Neighbouring sheets lap by this much: the figure of coating tapes. */
export const SIDE_LAP = 0.025 as Length;

function planSheet(work: Workbook, sheet: SheetStock, demand: WrapDemand): SheetDesign {
  const { recorder } = work;
  const { plyThickness } = work.case.laminate;
  assumeQuantity(work, undefined, {
    name: 'side lap of neighbouring sheets',
    kind: 'length',
    value: SIDE_LAP,
    tag: 'secondary',
    because: 'a figure of coating tapes',
  });
  const lap = sheet.finalLap ?? step(recorder, 'wrap/final-lap', finalLap, { plyThickness });
  const plan = step(recorder, 'wrap/sheet-plan', sheetPlan, {
    outsideDiameter: demand.outsideDiameter,
    plyThickness,
    plies: demand.plies,
    axialLength: demand.totalLength,
    sheetWidth: sheet.width,
    finalLap: lap,
    sideLap: SIDE_LAP,
  });
  const waste = wasteOf(work, sheet.waste);
  const order = step(recorder, 'wrap/rolls', rolls, {
    length: plan.totalLength,
    rollLength: sheet.rollLength,
    waste,
  });
  return {
    form: 'sheet',
    layers: demand.plies,
    bands: plan.sheets,
    sheetLength: plan.totalLength,
    sheetArea: plan.sheetArea,
    rolls: order.rolls,
    leftOnLastRoll: order.leftOnLastRoll,
  };
}

function wasteOf(work: Workbook, given: Ratio | undefined): Ratio {
  return assumeQuantity(work, given, {
    name: 'waste of tape or sheet',
    kind: 'ratio',
    value: 0.1 as Ratio,
    tag: 'secondary',
    because: 'the figure of a tape practice note; it costs material only',
  });
}

function percent(ratio: number): string {
  return `${Number((ratio * 100).toPrecision(3))} %`;
}

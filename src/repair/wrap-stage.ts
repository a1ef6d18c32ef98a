import { heading, step } from '../formula/index.js';
import type { Length, Ratio } from '../quantity/index.js';
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
} from '../wrap/index.js';
import type { SheetStock, TapeStock } from './case.js';
import type { SheetDesign, TapeDesign } from './design.js';
import { assumeQuantity, type Workbook, warn } from './workbook.js';

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
export function planWrap(work: Workbook, demand: WrapDemand): TapeDesign | SheetDesign {
  heading(work.recorder, 'Wrap');
  const { wrap } = work.case;
  return wrap.form === 'tape' ? planTape(work, wrap, demand) : planSheet(work, wrap, demand);
}

function planTape(work: Workbook, tape: TapeStock, demand: WrapDemand): TapeDesign {
  const { recorder } = work;
  const { outsideDiameter, plies } = demand;
  const plyThickness = work.case.laminate.plyThickness;
  const perPass = step(recorder, minimumLayers, { overlap: tape.overlap });
  const band = step(recorder, axialTapeWidth, {
    tapeWidth: tape.width,
    overlap: tape.overlap,
    meanDiameter: (outsideDiameter + plyThickness) as Length,
  });
  // The end bands, one tape width on each side, carry fewer layers than the rest: they may form the tapers.
  const fullCountLength = Math.max(demand.fullLength, demand.totalLength - 2 * band) as Length;
  const plan = step(recorder, tapePlan, {
    outsideDiameter,
    tapeWidth: tape.width,
    overlap: tape.overlap,
    layerThickness: plyThickness,
    requiredLayers: plies,
    fullCountLength,
  });
  const waste = wasteOf(work, tape.waste);
  const order = step(recorder, rolls, { length: plan.tapeLength, rollLength: tape.rollLength, waste });
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
  const lap = sheet.finalLap ?? step(recorder, finalLap, { plyThickness });
  const plan = step(recorder, sheetPlan, {
    outsideDiameter: demand.outsideDiameter,
    plyThickness,
    plies: demand.plies,
    axialLength: demand.totalLength,
    sheetWidth: sheet.width,
    finalLap: lap,
    sideLap: SIDE_LAP,
  });
  const waste = wasteOf(work, sheet.waste);
  const order = step(recorder, rolls, { length: plan.totalLength, rollLength: sheet.rollLength, waste });
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

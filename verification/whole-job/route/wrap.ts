import type { Extent } from './extent.js';
import { insideOverOutside } from './fitting.js';
import type { Band } from './joints.js';
import type { Job } from './read-job.js';
import { ruleOf } from './rules.js';

export interface Tape {
  readonly form: 'tape';
  readonly layersPerPass: number;
  readonly passes: number;
  readonly layers: number;
  readonly fullCountLength: number;
  readonly overallLength: number;
  readonly tapeLength: number;
  readonly rolls: number;
  readonly leftOnLastRoll: number;
  readonly insideOverlap?: number;
}

export interface Sheet {
  readonly form: 'sheet';
  readonly layers: number;
  readonly bands: number;
  readonly finalLap: number;
  readonly sheetLength: number;
  readonly sheetArea: number;
  readonly rolls: number;
  readonly leftOnLastRoll: number;
}

/** Waste of tape or sheet where none is stated. */
const TAPE_WASTE = 0.1;

/** One pass of tape over a length: laid round the mean diameter of what it builds up. */
export interface Pass {
  readonly diameter: number;
  /** Width of the tape along the pipe. */
  readonly band: number;
  readonly advance: number;
  readonly turnLength: number;
  readonly turns: number;
  readonly length: number;
}

/** Turns of a pass: a helix over the length less one band, and a turn without advance at each end (4.1 of the note). */
export function passOf(width: number, overlap: number, diameter: number, overall: number): Pass {
  const sine = (width * (1 - overlap)) / (Math.PI * diameter);
  const cosine = Math.sqrt(1 - sine * sine);
  const band = width / cosine;
  const advance = (width * (1 - overlap)) / cosine;
  const turnLength = (Math.PI * diameter) / cosine;
  const turns = (overall - band) / advance;
  return { diameter, band, advance, turnLength, turns, length: turns * turnLength + 2 * Math.PI * diameter };
}

function rollsFor(length: number, waste: number, roll: number): { readonly rolls: number; readonly left: number } {
  const needed = length * (1 + waste);
  const rolls = Math.ceil(needed / roll - 1e-9);
  return { rolls, left: rolls * roll - needed };
}

/** Lap of neighbouring sheets, which nobody states. */
const SIDE_LAP = 0.025;

/** Passes of tape that lay so many plies everywhere: each lays whole layers. */
function woundIn(overlap: number, plies: number): { readonly layersPerPass: number; readonly passes: number } {
  const layersPerPass = Math.floor(1 / (1 - overlap) + 1e-9);
  return { layersPerPass, passes: Math.ceil(plies / layersPerPass - 1e-9) };
}

/** What lies on the pipe, spread over it: turns and bands lap, and close up along the inside of a bend. */
export function spreadThickness(job: Job, wrapped: number, plies: number, inBands: boolean): number {
  const { wrap, laminate } = job;
  if (wrap.form !== 'tape') return (plies * laminate.plyThickness) / (inBands ? 1 - SIDE_LAP / wrap.width : 1);
  const advance = (1 - wrap.overlap) * (insideOverOutside(job, wrapped) ?? 1);
  return (woundIn(wrap.overlap, plies).passes * laminate.plyThickness) / advance;
}

export function tapeOf(job: Job, extent: Extent, wrapped: number, plies: number): Tape {
  const { wrap, laminate } = job;
  if (wrap.form !== 'tape') throw new Error('no tape');
  const { layersPerPass, passes } = woundIn(wrap.overlap, plies);
  const first = passOf(wrap.width, wrap.overlap, wrapped + laminate.plyThickness, 1);
  // The full count over defect and overlaps; and the whole wrap no shorter than with its tapers.
  const fullCountLength = extent.totalLength - 2 * Math.min(extent.taper, first.band);
  const overallLength = fullCountLength + 2 * first.band;
  const build = (2 * laminate.plyThickness) / (1 - wrap.overlap);
  let tapeLength = 0;
  for (let pass = 0; pass < passes; pass++) {
    tapeLength += passOf(wrap.width, wrap.overlap, wrapped + build * (pass + 0.5), overallLength).length;
  }
  const { rolls, left } = rollsFor(tapeLength, wrap.waste ?? TAPE_WASTE, wrap.rollLength);
  const shorter = insideOverOutside(job, wrapped);
  return {
    form: 'tape',
    layersPerPass,
    passes,
    layers: layersPerPass * passes,
    fullCountLength,
    overallLength,
    tapeLength,
    rolls,
    leftOnLastRoll: left,
    ...(shorter === undefined ? {} : { insideOverlap: 1 - shorter * (1 - wrap.overlap) }),
  };
}

/** Lap of a turn past its own start: stated or usual, and never less than its bond takes for the force of a ply. */
export function finalLapOf(job: Job, hoopStrain: number): number {
  const { wrap, laminate } = job;
  const stated = wrap.form === 'sheet' ? wrap.finalLap : undefined;
  const usual = stated ?? Math.max(0.15, 10 * laminate.plyThickness);
  const bond =
    (ruleOf(job, 'overlap.adhesiveFactor') * laminate.hoopModulus * hoopStrain * laminate.plyThickness) /
    (laminate.lapShearStrength ?? Number.NaN);
  return Number.isNaN(bond) ? usual : Math.max(usual, bond);
}

/** Layers one on another round a pipe (4.2); in bands each turn closes on itself with its own lap. */
export function sheetOf(
  job: Job,
  _extent: Extent,
  wrapped: number,
  plies: number,
  lap: number,
  bands: readonly Band[],
): Sheet {
  const { wrap, laminate } = job;
  if (wrap.form !== 'sheet') throw new Error('no sheet');
  const t = laminate.plyThickness;
  const sheetLength =
    bands.length === 0
      ? Math.PI * plies * (wrapped + plies * t) + lap
      : bands.reduce((sum, { layer }) => sum + Math.PI * (wrapped + (2 * layer - 1) * t) + lap, 0);
  const counts = new Map<number, number>();
  for (const { layer } of bands) counts.set(layer, (counts.get(layer) ?? 0) + 1);
  const { rolls, left } = rollsFor(sheetLength, wrap.waste ?? TAPE_WASTE, wrap.rollLength);
  return {
    form: 'sheet',
    layers: plies,
    bands: Math.max(1, ...counts.values()),
    finalLap: lap,
    sheetLength,
    sheetArea: sheetLength * wrap.width,
    rolls,
    leftOnLastRoll: left,
  };
}

import type { Extent } from './extent.js';
import type { Found } from './pipe-as-found.js';
import type { Job, Parts } from './read-job.js';

export const MIXING_TIME = 300;
const MIX_WASTE = 0.15;

export interface Mix {
  readonly volume?: number;
  readonly area?: number;
  readonly mass: number;
  readonly batches: number;
  readonly batchMass: number;
  readonly base: number;
  readonly hardener: number;
  readonly limitedBy: string;
  readonly kits: number;
}

/** From the first contact of resin and hardener to the last of it in place: a share of the working time. */
export const SHARE_OF_WORKING_TIME = 0.8;

/** Equal batches, none above a kit nor above what is placed within the time allowed, at the slowest of the paces. */
function batchesOf(
  mass: number,
  parts: Parts,
  kitMass: number,
  paces: readonly { readonly rate: number; readonly first: number }[],
  workingTime: number,
): Omit<Mix, 'mass'> {
  const allowed = SHARE_OF_WORKING_TIME * workingTime;
  const placed = Math.min(...paces.map(({ rate, first }) => rate * (allowed - MIXING_TIME - first)));
  const most = Math.min(kitMass, placed);
  const batches = Math.ceil(mass / most - 1e-9);
  const batchMass = mass / batches;
  const whole = parts.base + parts.hardener;
  return {
    batches,
    batchMass,
    base: (batchMass * parts.base) / whole,
    hardener: (batchMass * parts.hardener) / whole,
    limitedBy: batches === 1 ? 'job' : kitMass <= placed ? 'kit' : 'working time',
    kits: Math.ceil(mass / kitMass - 1e-9),
  };
}

/** Filler: a ring over the defect's length, thicker over the defect, and what the loss outside took (cure-and-site.md, 2.2). */
export function fillerVolume(job: Job, found: Found, extent: Extent, wrapLength: number): number {
  const { filler, defect } = job;
  if (filler === undefined) return 0;
  const D = found.outsideDiameter;
  const length = filler.underWholeWrap === true ? wrapLength : extent.defectLength;
  const ring = (Math.PI / 4) * ((D + 2 * filler.thickness) ** 2 - D * D) * length;
  const patch = extent.defectLength * defect.circumferentialWidth;
  // Loss from outside, round a hole too, and of a cause that nobody knows.
  const inside = defect.cause === 'internal corrosion' || defect.cause === 'internal erosion';
  const loss = inside ? 0 : found.wall - defect.remainingWall;
  return ring + patch * Math.max(0, filler.thicknessOverDefect - filler.thickness) + patch * loss;
}

export function fillerMix(job: Job, volume: number, workingTime: number): Mix | undefined {
  const { filler } = job;
  if (filler === undefined) return undefined;
  const mass = volume * filler.density * (1 + (filler.waste ?? MIX_WASTE));
  return {
    volume,
    mass,
    ...batchesOf(mass, filler.parts, filler.kitMass, [{ rate: filler.rate, first: 0 }], workingTime),
  };
}

/** Resin for the fabric: its areal weight times (1 - w)/w. */
export function resinMix(job: Job, area: number, length: number, workingTime: number): Mix | undefined {
  const { resin } = job;
  if (resin === undefined) return undefined;
  const w = resin.fibreMassFraction;
  const mass = ((area * resin.fabricWeight * (1 - w)) / w) * (1 + (resin.waste ?? MIX_WASTE));
  const { crew } = job;
  const paces = [{ rate: resin.rate, first: 0 }];
  if (crew !== undefined) paces.push({ rate: (crew.layingSpeed * mass) / length, first: crew.soakTime ?? 0 });
  return { area, mass, ...batchesOf(mass, resin.parts, resin.kitMass, paces, workingTime) };
}

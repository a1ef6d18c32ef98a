import type { Extent } from './extent.js';
import { besidePressure, MORE_OVAL, momentOfRing, pullOf } from './loads-of-case.js';
import type { Loss } from './loss.js';
import { type Found, wallLossRate } from './pipe-as-found.js';
import type { Job } from './read-job.js';
import { assessmentFactor, remainingStrength } from './remaining-strength.js';

/** What somebody made with a tool does not go on. */
export function goesOn({ causes }: Loss): boolean {
  return causes.some((cause) => cause !== 'mechanical damage');
}

function wallAfter(job: Job, loss: Loss, life: number): number {
  const rate = goesOn(loss) ? wallLossRate(job) : 0;
  return Math.max(0, loss.remainingWall - (job.defect.readingError ?? 0) - rate * life);
}

/** Safe pressure of a loss that lies apart, by itself. */
export function bears(job: Job, found: Found, loss: Loss, life: number, factor: number, yieldShare?: number): number {
  const spread = goesOn(loss) ? 2 * (job.defect.growth?.length ?? 0) * life : 0;
  const D = found.outsideDiameter;
  const thinned = {
    diameter: D,
    wall: found.wall,
    depth: found.wall - wallAfter(job, loss, life),
    length: loss.along.to - loss.along.from + spread,
    width: Math.min(loss.round.to - loss.round.from + spread, Math.PI * D),
    force: pullOf(job, D),
  };
  // A named method needs no profile here; where it does not reach, the least wall counts.
  const named = job.assessment?.method;
  const asked = named === 'effective area' || named === 'API 579-1 Level 2' ? undefined : named;
  return remainingStrength(job, thinned, factor, asked, yieldShare).safePressure;
}

/** Whether the laid length reaches a loss that lies apart, by the gap that both leave as they grow towards each other. */
export function liesUnder(job: Job, loss: Loss, extent: Extent, wrapLength: number | undefined): boolean {
  const gap = loss.along.from - job.reach - 2 * (job.defect.growth?.length ?? 0) * job.repair.life;
  return gap < ((wrapLength ?? extent.totalLength) - job.defect.axialLength) / 2;
}

/** On the buckling pressure of a ring of the least wall, as a laminate is asked for (docs/how-it-designs.md). */
const COLLAPSE_FACTOR = 3;

/** Under what a loss that does not act with the defect fails by the end of the life: nothing holds it but itself. */
export function neighbourFails(
  job: Job,
  found: Found,
  loss: Loss,
): readonly ('pressure' | 'what presses from outside' | 'soil')[] {
  const { life } = job.repair;
  const factor = assessmentFactor(job);
  // Without the rate and the factor that are asked for, nothing of its end of life is known.
  if (factor === undefined || (job.defect.growth === undefined && job.apart.some(goesOn))) return [];
  const { designPressure } = job.service;
  const t = wallAfter(job, loss, life);
  const D = found.outsideDiameter;
  const { soil, outside } = besidePressure(job, D);
  const collapse = ((2 * (job.pipe.material.modulus ?? 207e9)) / (1 - 0.3 ** 2)) * (t / D) ** 3;
  // Soil bends the ring while the pressure pulls it: both, with the factor of the line, within the yield strength.
  const bent = (6 * MORE_OVAL * soil * momentOfRing(D / 2)) / (t * t);
  const stress = factor * ((designPressure * D) / (2 * t) + bent);
  return [
    ...(bears(job, found, loss, life, factor) < designPressure ? (['pressure'] as const) : []),
    ...(COLLAPSE_FACTOR * outside > collapse ? (['what presses from outside'] as const) : []),
    ...(soil > 0 && stress > job.pipe.material.yieldStrength ? (['soil'] as const) : []),
  ];
}

import { insideOverOutside } from './fitting.js';
import type { Unbonded } from './leak.js';
import type { Found } from './pipe-as-found.js';
import type { Job } from './read-job.js';
import { bondStrains, ruleOf } from './rules.js';

export interface Extent {
  readonly meanThickness: number;
  readonly overlap: {
    readonly candidates: readonly { readonly criterion: string; readonly value: number }[];
    readonly governing: string;
    readonly value: number;
  };
  readonly taper: number;
  readonly defectLength: number;
  readonly totalLength: number;
  /** Along the inside of a bend; every other length is along its outside. */
  readonly insideLength?: number;
}

/** Overlap, taper and whole length (2.12). */
export function extentOf(job: Job, found: Found, where: Unbonded | undefined, laid: number): Extent | undefined {
  const { laminate } = job;
  const follows = bondStrains(job);
  if (laminate.lapShearStrength === undefined || follows === undefined) return undefined;
  // The bond follows the larger strain: the soft column counts only where the laminate is soft when cold too.
  const softBond = laminate.axialModulus / laminate.hoopModulus <= ruleOf(job, 'modulusShare');
  const root = Math.sqrt(found.outsideDiameter * found.wall);
  const candidates = [
    {
      criterion: 'geometry',
      value: (ruleOf(job, 'overlap.geometry.coefficient') * root) / Math.sqrt(ruleOf(job, 'overlap.geometry.divisor')),
    },
    { criterion: 'minimum', value: ruleOf(job, 'overlap.minimum') },
    {
      criterion: 'adhesive',
      value:
        (ruleOf(job, 'overlap.adhesiveFactor') *
          laminate.axialModulus *
          (softBond ? follows.softAxial : follows.axial) *
          laid) /
        laminate.lapShearStrength,
    },
  ];
  const hole = found.designHole;
  const { 'overlap.hole.multiple': multiple, 'overlap.hole.share': share } = job.rules;
  if (hole !== undefined && multiple !== undefined && share !== undefined && hole < share * root) {
    candidates.push({ criterion: 'hole', value: multiple * hole });
  }
  const longest = candidates.reduce((a, b) => (b.value > a.value ? b : a));
  const defectLength = Math.max(found.lengthAtEndOfLife, found.designHole ?? 0, where?.length ?? 0);
  const taper = ruleOf(job, 'overlap.taper') * laid;
  // On a bend the whole length has to lie along the inside, where it is shortest.
  const length = defectLength + 2 * longest.value + 2 * taper;
  const shorter = insideOverOutside(job, found.outsideDiameter);
  return {
    meanThickness: laid,
    overlap: { candidates, governing: longest.criterion, value: longest.value },
    taper,
    defectLength,
    totalLength: length / (shorter ?? 1),
    ...(shorter === undefined ? {} : { insideLength: length }),
  };
}

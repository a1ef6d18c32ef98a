import { insideOverOutside } from './fitting.js';
import type { Unbonded } from './leak.js';
import type { Found } from './pipe-as-found.js';
import type { Job } from './read-job.js';
import { BOND_FACTOR, bondStrain, LEAST_OVERLAP, TAPER } from './rules.js';

export interface Extent {
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
  if (laminate.lapShearStrength === undefined) return undefined;
  // The bond follows the larger strain: the soft column counts only where the laminate is soft when cold too.
  const softBond = laminate.axialModulus / laminate.hoopModulus <= 0.5;
  const root = Math.sqrt(found.outsideDiameter * found.wall);
  const iso = job.basis === 'ISO 24817';
  const candidates = [
    { criterion: 'geometry', value: iso ? 2 * root : (2.5 / Math.SQRT2) * root },
    { criterion: 'minimum', value: LEAST_OVERLAP },
    {
      criterion: 'adhesive',
      value: (BOND_FACTOR * laminate.axialModulus * bondStrain(softBond) * laid) / laminate.lapShearStrength,
    },
  ];
  const hole = found.designHole;
  if (iso && hole !== undefined && hole < 0.5 * root) candidates.push({ criterion: 'hole', value: 4 * hole });
  const longest = candidates.reduce((a, b) => (b.value > a.value ? b : a));
  const defectLength = Math.max(found.lengthAtEndOfLife, found.designHole ?? 0, where?.length ?? 0);
  const taper = TAPER * laid;
  // On a bend the whole length has to lie along the inside, where it is shortest.
  const length = defectLength + 2 * longest.value + 2 * taper;
  const shorter = insideOverOutside(job, found.outsideDiameter);
  return {
    overlap: { candidates, governing: longest.criterion, value: longest.value },
    taper,
    defectLength,
    totalLength: length / (shorter ?? 1),
    ...(shorter === undefined ? {} : { insideLength: length }),
  };
}

import { grownProfile } from './effective-area.js';
import { pullOf } from './loads-of-case.js';
import type { Found } from './pipe-as-found.js';
import type { Job } from './read-job.js';
import { assessmentFactor, remainingStrength, type Strength } from './remaining-strength.js';

/** Remaining strength by the method that the case names, or by all; nothing where it cannot be judged. */
export function strengthOf(job: Job, found: Found): Strength | undefined {
  const factor = assessmentFactor(job);
  // The methods hold for straight pipe.
  if (found.throughWall || factor === undefined || job.fitting?.kind === 'bend') return undefined;
  const { defect } = job;
  const named = job.assessment?.method;
  const thinned = {
    diameter: found.outsideDiameter,
    wall: found.wall,
    depth: found.depthAtEndOfLife,
    length: found.lengthAtEndOfLife,
    width: found.widthAtEndOfLife,
    force: pullOf(job, found.outsideDiameter),
    ...(defect.profile === undefined
      ? {}
      : {
          profile: grownProfile(
            defect.profile,
            found.wall,
            found.depthAtEndOfLife - (found.wall - defect.remainingWall),
            (found.lengthAtEndOfLife - defect.axialLength) / 2,
          ),
        }),
  };
  const strength = remainingStrength(job, thinned, factor, named);
  const answers = named === undefined || strength.methods.some(({ criterion }) => criterion === named);
  return answers ? strength : undefined;
}

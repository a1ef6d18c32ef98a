import { step } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';
import type { MethodInside, RemainingStrengthJob } from '../remaining-strength/remaining-strength-methods.js';
import { type Api579Shell, nearestDiscontinuity } from './api579-shell.js';
import { foliasApi579BeyondRange } from './folias-api579.js';
import { localMetalLoss } from './local-metal-loss.js';
import { localMetalLossProfile } from './local-metal-loss-profile.js';

/** Level 1: one depth and one length. */
export function assessLocalMetalLoss(job: RemainingStrengthJob): MethodInside {
  const { outsideDiameter, wallThickness: t, defectDepth, defectLength, maximumPressure } = job.input;
  const input = {
    insideDiameter: (outsideDiameter - 2 * t) as Length,
    correctedWall: t,
    workingPressure: maximumPressure,
    measuredMinimum: (t - defectDepth) as Length,
    defectLength,
  };
  const checked = withDistance(job, input);
  const { reducedPressure, lengthParameter } = step(job.recorder, 'pipe/local-metal-loss', localMetalLoss, checked);
  return {
    method: 'API 579-1 Level 1',
    inside: true,
    safePressure: reducedPressure,
    notes: shellNotes(job, checked, lengthParameter),
  };
}

/** Level 2: the profile of the wall; nothing where there is none. */
export function assessLocalMetalLossProfile(job: RemainingStrengthJob): MethodInside | undefined {
  const { outsideDiameter, wallThickness: t, profile, maximumPressure } = job.input;
  if (profile === undefined) return undefined;
  const input = {
    insideDiameter: (outsideDiameter - 2 * t) as Length,
    correctedWall: t,
    workingPressure: maximumPressure,
    profile: profile.map(({ position, depth }) => ({ position, wall: (t - depth) as Length })),
  };
  const checked = withDistance(job, input);
  const { reducedPressure, lengthParameter } = step(
    job.recorder,
    'pipe/local-metal-loss-profile',
    localMetalLossProfile,
    checked,
  );
  return {
    method: 'API 579-1 Level 2',
    inside: true,
    safePressure: reducedPressure,
    notes: shellNotes(job, checked, lengthParameter),
  };
}

/** A distance that was given, or that of the nearest attachment where it is far enough: nearer, nobody knows what it is. */
function withDistance<Shell extends Api579Shell>({ input }: RemainingStrengthJob, shell: Shell): Shell {
  const { distanceToAttachment: free } = input;
  const isFree = free !== undefined && free >= nearestDiscontinuity(shell.insideDiameter, shell.correctedWall);
  const distanceToDiscontinuity = input.distanceToDiscontinuity ?? (isFree ? free : undefined);
  return distanceToDiscontinuity === undefined ? shell : { ...shell, distanceToDiscontinuity };
}

function shellNotes({ input }: RemainingStrengthJob, shell: Api579Shell, lengthParameter: number): string[] {
  const notes: string[] = [];
  if (shell.distanceToDiscontinuity === undefined)
    notes.push(
      input.distanceToAttachment === undefined
        ? 'no distance to the nearest structural discontinuity was given; it must be at least 1.8 sqrt(D_i t_c)'
        : 'the nearest attachment is closer than 1.8 sqrt(D_i t_c), and beside a structural discontinuity, such as a branch or a flange, the method does not hold',
    );
  if (foliasApi579BeyondRange({ lengthParameter }))
    notes.push('length parameter above 20: bulging factor held at its value there');
  return notes;
}

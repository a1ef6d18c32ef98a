import { atMost, finite, nonNegative, positive, refuse, within } from '../../formula/index.js';
import type { Defect, ProfilePoint } from './case.js';

/** Refuses a defect that contradicts itself or the wall that it lies in. */
export function checkDefect(defect: Defect, t: number): void {
  positive(defect.axialLength, 'defect.axialLength', 'm');
  positive(defect.circumferentialWidth, 'defect.circumferentialWidth', 'm');
  nonNegative(defect.remainingWall, 'defect.remainingWall', 'm');
  within(defect.remainingWall, 0, t, 'defect.remainingWall', 'm');
  if (defect.readingError !== 'none') nonNegative(defect.readingError, 'defect.readingError', 'm');
  checkHole(defect.holeDiameter, 'defect.holeDiameter', defect);
  checkHole(defect.holeAtEndOfLife, 'defect.holeAtEndOfLife', defect);
  if (defect.growth !== 'none') {
    const { depth } = defect.growth;
    if (typeof depth === 'number') nonNegative(depth, 'defect.growth.depth', 'm/s');
    else {
      positive(depth.previousWall, 'defect.growth.depth.previousWall', 'm');
      positive(depth.sincePrevious, 'defect.growth.depth.sincePrevious', 's');
      positive(depth.service, 'defect.growth.depth.service', 's');
    }
    nonNegative(defect.growth.length, 'defect.growth.length', 'm/s');
  }
  if (defect.profile !== undefined) checkProfile(defect.profile, defect, t);
}

/** A hole lies inside the circle round the defect, or the extents of the defect were not measured. */
function checkHole(diameter: number | undefined, parameter: string, defect: Defect): void {
  if (diameter === undefined) return;
  positive(diameter, parameter, 'm');
  const round = Math.hypot(defect.axialLength, defect.circumferentialWidth);
  atMost(diameter, round, 'the circle round the defect', parameter, 'm');
}

/** A tenth of a millimetre: what two readings of one wall may differ by. */
const PROFILE_SLACK = 1e-4;

function checkProfile(profile: readonly ProfilePoint[], defect: Defect, t: number): void {
  if (profile.length < 2) {
    refuse({
      code: 'invalid-input',
      parameter: 'defect.profile',
      value: `${profile.length} points`,
      unit: '',
      constraint: 'must hold at least two points',
    });
  }
  for (const [i, point] of profile.entries()) {
    finite(point.position, `defect.profile[${i}].position`, 'm');
    nonNegative(point.depth, `defect.profile[${i}].depth`, 'm');
    within(point.depth, 0, t, `defect.profile[${i}].depth`, 'm');
    const before = profile[i - 1];
    if (before !== undefined && !(point.position > before.position)) {
      refuse({
        code: 'invalid-input',
        parameter: `defect.profile[${i}].position`,
        value: point.position,
        unit: 'm',
        constraint: 'must lie beyond the point before it, {limit}: order the points along the pipe',
        limit: before.position,
      });
    }
  }
  const deepest = Math.max(...profile.map(({ depth }) => depth));
  const stated = t - defect.remainingWall;
  if (Math.abs(deepest - stated) > PROFILE_SLACK) {
    refuse({
      code: 'invalid-input',
      parameter: 'defect.profile',
      value: `at most ${deepest}`,
      unit: 'm deep',
      constraint: `its deepest point must agree with the remaining wall, which means a depth of ${stated} m`,
    });
  }
  const span = (profile.at(-1)?.position ?? 0) - (profile[0]?.position ?? 0);
  if (span < defect.axialLength - PROFILE_SLACK) {
    refuse({
      code: 'invalid-input',
      parameter: 'defect.profile',
      value: span,
      unit: 'm long',
      constraint: `must reach over the whole defect, ${defect.axialLength} m: what was not measured would count as sound`,
    });
  }
}

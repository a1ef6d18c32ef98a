import { agree, exceeds, reaches } from '../../numeric/index.js';
import { circumference, defectCircleDiameter, metalLossDepth, remainingWall } from '../../pipe/index.js';
import { exactly, type Length, line, roundedDown, roundedUp } from '../../quantity/index.js';
import { practice } from '../../rules/index.js';
import type { Defect, PipeAsBuilt, ProfilePoint, WallReadings } from './case.js';
import type { Note } from './contradiction.js';

/** What contradicts itself in a defect, its hole, its profile and its growth, or between it and the pipe. */
export function inDefect(defect: Defect, pipe: PipeAsBuilt, note: Note): void {
  const { wallThickness: t, outsideDiameter } = pipe;
  const { kind, circumferentialWidth, remainingWall: left, holeDiameter, profile, growth } = defect;
  if (left > t) {
    const passes = roundedDown('nominal wall', 'length', t);
    const must = line('be at most the nominal wall, {0}', passes);
    note({ path: 'defect.remainingWall', must, limit: 'pipe.wallThickness', passes });
  }
  const round = outsideDiameter === undefined ? pipe.circumference : circumference({ outsideDiameter });
  if (round !== undefined && exceeds(circumferentialWidth, round)) {
    const passes = roundedDown('circumference', 'length', round);
    const must = line('be at most the circumference of the pipe, {0}', passes);
    note({ path: 'defect.circumferentialWidth', must, passes });
  }
  if (holeDiameter !== undefined && kind !== 'through-wall hole') {
    const instead = 'a hole that is expected by the end of the life of the repair goes into defect.holeAtEndOfLife';
    const must = line(`be left out where the defect is "${kind}", not a through-wall hole; ${instead}`);
    note({ path: 'defect.holeDiameter', must });
  }
  inHoles(defect, note);
  if (profile !== undefined) inProfile(profile, t, defect, note);
  if (growth !== 'none' && typeof growth.depth === 'object') inReadings(growth.depth, left, note);
}

/** A hole lies inside the circle round the defect, or the extents of the defect were not measured. */
function inHoles({ axialLength, circumferentialWidth, holeDiameter, holeAtEndOfLife }: Defect, note: Note): void {
  if (holeDiameter === undefined && holeAtEndOfLife === undefined) return;
  const across = defectCircleDiameter({ defectLength: axialLength, defectWidth: circumferentialWidth });
  const passes = roundedDown('diagonal of the defect', 'length', across);
  const must = line('fit into the defect, which is {0} from corner to corner', passes);
  if (holeDiameter !== undefined && holeDiameter > across) note({ path: 'defect.holeDiameter', must, passes });
  if (holeAtEndOfLife === undefined) return;
  if (holeAtEndOfLife > across) note({ path: 'defect.holeAtEndOfLife', must, passes });
  if (holeDiameter !== undefined && holeAtEndOfLife < holeDiameter) {
    const least = roundedUp('hole as it is now', 'length', holeDiameter);
    const grown = line('be at least the hole as it is now, {0}', least);
    note({ path: 'defect.holeAtEndOfLife', must: grown, limit: 'defect.holeDiameter', passes: least });
  }
}

function inProfile(profile: readonly ProfilePoint[], t: Length, defect: Defect, note: Note): void {
  let before: readonly [path: string, position: Length] | undefined;
  let deepest = profile[0] as ProfilePoint;
  let inOrder = true;
  for (const [index, point] of profile.entries()) {
    const path = `defect.profile[${index}]`;
    if (before !== undefined && point.position <= before[1]) {
      inOrder = false;
      const limit = exactly('point before it', 'length', before[1]);
      const must = line('lie beyond the point before it, {0}, since the points stand in order along the pipe', limit);
      note({ path: `${path}.position`, must, limit: before[0] });
    }
    if (point.depth > t) {
      const passes = roundedDown('wall', 'length', t);
      const must = line('be at most the wall, {0}: a defect is not deeper than the wall', passes);
      note({ path: `${path}.depth`, must, limit: 'pipe.wallThickness', passes });
    }
    if (point.depth > deepest.depth) deepest = point;
    before = [`${path}.position`, point.position];
  }
  if (deepest.depth <= t && defect.remainingWall <= t)
    atDeepest(deepest.depth, profile.indexOf(deepest), t, defect.remainingWall, note);
  if (inOrder) alongProfile(profile, defect.axialLength, note);
}

/** The deepest point of the profile and the least wall are one and the same place. */
function atDeepest(depth: Length, index: number, t: Length, left: Length, note: Note): void {
  const apart = practice.wallReadingsApart.value;
  const stated = metalLossDepth({ wallThickness: t, remainingWall: left });
  if (agree(depth, stated, apart)) return;
  const within = exactly('difference of two readings', 'length', apart);
  if (depth > stated) {
    const leaves = remainingWall({ wallThickness: t, defectDepth: depth });
    const passes = exactly('wall at the deepest point', 'length', leaves);
    const must =
      'be {0}, within {1}, what the deepest point of the profile leaves, since it is the least wall left anywhere in the defect';
    note({ path: 'defect.remainingWall', must: line(must, passes, within), passes });
  } else {
    const passes = exactly('depth of the loss', 'length', stated);
    const must =
      'be {0}, within {1}, since it is the deepest point of the profile and defect.remainingWall leaves that depth';
    note({ path: `defect.profile[${index}].depth`, must: line(must, passes, within), passes });
  }
}

/** What was not measured would count as sound. */
function alongProfile(profile: readonly ProfilePoint[], axialLength: Length, note: Note): void {
  const [first, last] = [profile[0] as ProfilePoint, profile.at(-1) as ProfilePoint];
  if (reaches(first.position, last.position, axialLength, practice.wallReadingsApart.value)) return;
  const length = roundedUp('length of the defect', 'length', axialLength);
  const start = exactly('first point', 'length', first.position);
  const must =
    'lie {0} or more beyond the first point, {1}, so that the profile reaches over the whole defect: what was not measured would count as sound';
  note({
    path: `defect.profile[${profile.indexOf(last)}].position`,
    must: line(must, length, start),
    limit: 'defect.axialLength',
  });
}

function inReadings({ sincePrevious, service }: WallReadings, left: Length, note: Note): void {
  const path = 'defect.growth.depth';
  if (left === 0) {
    const must = line('be above 0 where the growth follows from readings of the wall; else give the growth as a rate');
    note({ path: 'defect.remainingWall', must });
  }
  if (sincePrevious <= service) return;
  const passes = roundedDown('time since the pipe was new', 'time', service);
  const must = line('be at most the time since the wall was that of the new pipe, {0}', passes);
  note({ path: `${path}.sincePrevious`, must, limit: `${path}.service`, passes });
}

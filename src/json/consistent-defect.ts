import { type Length, length, writeQuantity } from '../quantity/index.js';
import type { Defect, ProfilePoint, RepairCase, WallReadings } from '../repair/case/case.js';
import { type Contradiction, inMillimetres, outsideDiameter } from './contradiction.js';

/** A tenth of a millimetre: what two readings of one wall may differ by. */
const PROFILE_SLACK = 1e-4;

/** What contradicts itself in a defect, its hole, its profile and its growth. */
export function* inDefect({ pipe, defect }: RepairCase): Generator<Contradiction> {
  const { wallThickness: t } = pipe;
  const { kind, circumferentialWidth, remainingWall, holeDiameter, holeAtEndOfLife, profile, growth } = defect;
  const round = Math.PI * outsideDiameter(pipe);
  if (remainingWall > t) {
    yield {
      path: ['defect', 'remainingWall'],
      must: 'be at most the nominal wall, {limit}',
      limit: { at: ['pipe', 'wallThickness'], text: inMillimetres(t) },
    };
  }
  if (circumferentialWidth > round * (1 + 1e-6)) {
    yield {
      path: ['defect', 'circumferentialWidth'],
      must: `be at most the circumference of the pipe, ${inMillimetres(round)}`,
      example: inMillimetres(circumferentialWidth > 0.1 ? length.m(0.1) : round),
    };
  }
  if (holeDiameter !== undefined && kind !== 'through-wall hole') {
    yield {
      path: ['defect', 'holeDiameter'],
      must: `be left out where the defect is "${kind}", not a through-wall hole; a hole that is expected by the end of the life of the repair goes into defect.holeAtEndOfLife`,
    };
  }
  yield* inHole(defect, 'holeDiameter');
  yield* inHole(defect, 'holeAtEndOfLife');
  if (holeDiameter !== undefined && holeAtEndOfLife !== undefined && holeAtEndOfLife < holeDiameter) {
    yield {
      path: ['defect', 'holeAtEndOfLife'],
      must: 'be at least the hole as it is now, {limit}',
      limit: { at: ['defect', 'holeDiameter'], text: inMillimetres(holeDiameter) },
    };
  }
  if (profile !== undefined) yield* inProfile(profile, pipe, defect);
  if (growth !== 'none' && typeof growth.depth === 'object') yield* inReadings(growth.depth, remainingWall);
}

/** A hole lies inside the circle round the defect, or the extents of the defect were not measured. */
function* inHole(defect: Defect, field: 'holeDiameter' | 'holeAtEndOfLife'): Generator<Contradiction> {
  const { axialLength, circumferentialWidth, [field]: hole } = defect;
  const across = Math.hypot(axialLength, circumferentialWidth);
  if (hole === undefined || hole <= across) return;
  yield {
    path: ['defect', field],
    must: `fit into the defect, which is ${inMillimetres(across)} from corner to corner`,
    example: inMillimetres(Math.min(axialLength, circumferentialWidth)),
  };
}

function* inProfile(
  profile: readonly ProfilePoint[],
  { wallThickness: t }: RepairCase['pipe'],
  { remainingWall, axialLength }: Defect,
): Generator<Contradiction> {
  let inOrder = true;
  for (const [index, { position, depth }] of profile.entries()) {
    const before = profile[index - 1]?.position ?? Number.NEGATIVE_INFINITY;
    if (position <= before) {
      inOrder = false;
      yield {
        path: ['defect', 'profile', index, 'position'],
        must: `lie beyond the point before it, {limit}, since the points stand in order along the pipe`,
        limit: { at: ['defect', 'profile', index - 1, 'position'], text: inMillimetres(before) },
        example: inMillimetres(before + 0.01),
      };
    }
    if (depth > t) {
      yield {
        path: ['defect', 'profile', index, 'depth'],
        must: 'be at most the wall, {limit}: a defect is not deeper than the wall',
        limit: { at: ['pipe', 'wallThickness'], text: inMillimetres(t) },
        example: inMillimetres(t / 2),
      };
    }
  }
  yield* atDeepest(profile, t, remainingWall);
  if (inOrder) yield* alongProfile(profile, axialLength);
}

/** The deepest point of the profile and the least wall are one and the same place. */
function* atDeepest(profile: readonly ProfilePoint[], t: Length, remainingWall: Length): Generator<Contradiction> {
  const deepest = Math.max(...profile.map(({ depth }) => depth));
  const stated = t - remainingWall;
  if (deepest > t || remainingWall > t || Math.abs(deepest - stated) <= PROFILE_SLACK) return;
  if (deepest > stated) {
    yield {
      path: ['defect', 'remainingWall'],
      must: `be ${inMillimetres(t - deepest)}, within 0.1 mm, what the deepest point of the profile leaves, since it is the least wall left anywhere in the defect`,
      example: inMillimetres(t - deepest),
    };
    return;
  }
  yield {
    path: ['defect', 'profile', profile.findIndex(({ depth }) => depth === deepest), 'depth'],
    must: `be ${inMillimetres(stated)}, within 0.1 mm, since it is the deepest point of the profile and defect.remainingWall leaves that depth`,
    example: inMillimetres(stated),
  };
}

/** What was not measured would count as sound. */
function* alongProfile(profile: readonly ProfilePoint[], axialLength: Length): Generator<Contradiction> {
  const [first, last] = [profile[0]?.position ?? 0, profile.at(-1)?.position ?? 0];
  if (last - first >= axialLength - PROFILE_SLACK) return;
  const least = inMillimetres(first + axialLength);
  yield {
    path: ['defect', 'profile', profile.length - 1, 'position'],
    must: `be at least ${least}, so that the profile reaches over the whole defect: what was not measured would count as sound`,
    example: least,
  };
}

function* inReadings({ sincePrevious, service }: WallReadings, remainingWall: Length): Generator<Contradiction> {
  const path = ['defect', 'growth', 'depth'];
  if (remainingWall === 0) {
    yield {
      path: ['defect', 'remainingWall'],
      must: 'be above 0 where the growth follows from readings of the wall; else give the growth as a rate',
      example: '1 mm',
    };
  }
  if (sincePrevious <= service) return;
  yield {
    path: [...path, 'sincePrevious'],
    must: 'be at most the time since the wall was that of the new pipe, {limit}',
    limit: { at: [...path, 'service'], text: writeQuantity('time', service, 'year') },
  };
}

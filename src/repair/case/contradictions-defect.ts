import { agree, exceeds, spans } from '../../numeric/index.js';
import { defectCircleDiameter, metalLossDepth, remainingWall } from '../../pipe/index.js';
import { exactly, type Length, line, roundedDown, roundedUp } from '../../quantity/index.js';
import { practice } from '../../rules/index.js';
import type { Defect, PipeAsBuilt, ProfilePoint } from './case.js';
import { atLeast, atMost, type Note } from './contradiction.js';

const READING = 'defect.remainingWall';

/** What contradicts itself in a defect, its hole, its profile and its growth, or between it and the pipe. */
export function inDefect(defect: Defect, { wallThickness: t }: PipeAsBuilt, round: Length, note: Note): void {
  const { kind, circumferentialWidth, remainingWall: left, holeDiameter, profile, growth } = defect;
  if (left > t) atMost(note, READING, ['the nominal wall', 'length', t, 'pipe.wallThickness']);
  if (exceeds(circumferentialWidth, round))
    atMost(note, 'defect.circumferentialWidth', ['the circumference of the pipe', 'length', round]);
  if (holeDiameter !== undefined && kind !== 'through-wall hole') {
    const instead =
      kind === 'through-wall slot'
        ? 'the opening of a slot goes into defect.slot'
        : 'a hole that is expected by the end of the life of the repair goes into defect.holeAtEndOfLife';
    const must = line(`be left out where the defect is "${kind}", not a through-wall hole; ${instead}`);
    note({ path: 'defect.holeDiameter', must });
  }
  inHoles(defect, note);
  inSlot(defect, note);
  inNeighbours(defect, t, round, note);
  if (profile !== undefined) inProfile(profile, t, defect, note);
  if (growth === 'none' || typeof growth.depth !== 'object') return;
  const { sincePrevious, service } = growth.depth;
  if (left === 0) {
    const must = line('be above 0 where the growth follows from readings of the wall; else give the growth as a rate');
    note({ path: READING, must });
  }
  const path = 'defect.growth.depth';
  const { previousWall } = growth.depth;
  if (previousWall > t) atMost(note, `${path}.previousWall`, ['the nominal wall', 'length', t, 'pipe.wallThickness']);
  if (left <= t && previousWall < left)
    atLeast(note, `${path}.previousWall`, ['the wall left today, since none grows back', 'length', left, READING]);
  const sinceNew = ['the time since the wall was that of the new pipe', 'time', service, `${path}.service`] as const;
  if (sincePrevious > service) atMost(note, `${path}.sincePrevious`, sinceNew);
}

/** A hole lies inside the circle round the defect, or the extents of the defect were not measured. */
function inHoles({ axialLength, circumferentialWidth, holeDiameter, holeAtEndOfLife }: Defect, note: Note): void {
  const across = defectCircleDiameter({ defectLength: axialLength, defectWidth: circumferentialWidth });
  for (const [path, hole] of [
    ['defect.holeDiameter', holeDiameter],
    ['defect.holeAtEndOfLife', holeAtEndOfLife],
  ] as const) {
    if (hole === undefined || hole <= across) continue;
    const passes = roundedDown('diagonal of the defect', 'length', across);
    note({ path, must: line('fit into the defect, which is {0} from corner to corner', passes), passes });
  }
  if (holeDiameter !== undefined && holeAtEndOfLife !== undefined && holeAtEndOfLife < holeDiameter)
    atLeast(note, 'defect.holeAtEndOfLife', ['the hole as it is now', 'length', holeDiameter, 'defect.holeDiameter']);
}

/** A slot lies inside the defect, and no other kind has one. */
function inSlot({ kind, axialLength, circumferentialWidth, slot, holeAtEndOfLife }: Defect, note: Note): void {
  if (kind === 'through-wall slot' && holeAtEndOfLife !== undefined) {
    const must = line('be left out where the defect is a "through-wall slot": a slot stays one, and grows at its rim');
    note({ path: 'defect.holeAtEndOfLife', must });
  }
  if (slot === undefined) return;
  if (kind !== 'through-wall slot') {
    note({ path: 'defect.slot', must: line(`be left out where the defect is "${kind}", not a through-wall slot`) });
    return;
  }
  if (slot.axialLength > axialLength)
    atMost(note, 'defect.slot.axialLength', ['that of the defect', 'length', axialLength, 'defect.axialLength']);
  const width = ['that of the defect', 'length', circumferentialWidth, 'defect.circumferentialWidth'] as const;
  if (slot.circumferentialWidth > circumferentialWidth) atMost(note, 'defect.slot.circumferentialWidth', width);
}

/** A neighbour lies on this pipe, and leaves metal between its two ends round it. */
function inNeighbours({ neighbours }: Defect, t: Length, round: Length, note: Note): void {
  if (neighbours === undefined || neighbours === 'none') return;
  for (const [index, { remainingWall: left, circumferentialWidth, gapRound }] of neighbours.entries()) {
    const path = `defect.neighbours[${index}]`;
    if (left > t) atMost(note, `${path}.remainingWall`, ['the nominal wall', 'length', t, 'pipe.wallThickness']);
    if (exceeds(circumferentialWidth, round))
      atMost(note, `${path}.circumferentialWidth`, ['the circumference of the pipe', 'length', round]);
    if (exceeds(gapRound, round)) atMost(note, `${path}.gapRound`, ['the circumference of the pipe', 'length', round]);
  }
}

function inProfile(profile: readonly ProfilePoint[], t: Length, defect: Defect, note: Note): void {
  const wall = ['the wall', 'length', t, 'pipe.wallThickness'] as const;
  let before = Number.NEGATIVE_INFINITY;
  let path = '';
  let [deepest, at] = [Number.NEGATIVE_INFINITY as Length, ''];
  let inOrder = true;
  for (const [index, { position, depth }] of profile.entries()) {
    const limit = path;
    path = `defect.profile[${index}]`;
    if (position <= before) {
      inOrder = false;
      const must = 'lie beyond the point before it, {0}, since the points stand in order along the pipe';
      const point = exactly('point before it', 'length', before);
      note({ path: `${path}.position`, must: line(must, point), limit: `${limit}.position` });
    }
    if (depth > t) atMost(note, `${path}.depth`, wall, ': a defect is not deeper than the wall');
    if (depth > deepest) [deepest, at] = [depth, path];
    before = position;
  }
  if (deepest <= t && defect.remainingWall <= t) atDeepest(deepest, `${at}.depth`, t, defect.remainingWall, note);
  if (inOrder) alongProfile(profile, defect.axialLength, `${path}.position`, note);
}

/** The deepest point of the profile and the least wall are one and the same place. */
function atDeepest(depth: Length, path: string, t: Length, left: Length, note: Note): void {
  const apart = practice.wallReadingsApart.value;
  const stated = metalLossDepth({ wallThickness: t, remainingWall: left });
  if (agree(depth, stated, apart)) return;
  const within = exactly('difference of two readings', 'length', apart);
  if (depth > stated) {
    const passes = exactly(
      'wall at the deepest point',
      'length',
      remainingWall({ wallThickness: t, defectDepth: depth }),
    );
    const must =
      'be {0}, within {1}, what the deepest point of the profile leaves, since it is the least wall left anywhere in the defect';
    note({ path: READING, must: line(must, passes, within), passes });
  } else {
    const passes = exactly('depth of the loss', 'length', stated);
    const must = `be {0}, within {1}, since it is the deepest point of the profile and ${READING} leaves that depth`;
    note({ path, must: line(must, passes, within), passes });
  }
}

/** What was not measured would count as sound. */
function alongProfile(profile: readonly ProfilePoint[], axialLength: Length, path: string, note: Note): void {
  const [first, last] = [profile[0] as ProfilePoint, profile.at(-1) as ProfilePoint];
  if (spans(first.position, last.position, axialLength, practice.wallReadingsApart.value)) return;
  const length = roundedUp('length of the defect', 'length', axialLength);
  const must =
    'lie {0} or more beyond the first point, so that the profile reaches over the whole defect: what was not measured would count as sound';
  note({ path, must: line(must, length), limit: 'defect.axialLength' });
}

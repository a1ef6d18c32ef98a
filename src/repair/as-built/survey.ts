import { missingTo, reaches } from '../../numeric/index.js';
import type { Amount, Length } from '../../quantity/index.js';
import type { Slot } from '../case/case.js';
import type { Designed } from '../design/design.js';
import { isFarBeyond } from './far-beyond.js';
import { notShown, reaching } from './points.js';
import type { AsBuiltPoint, AsBuiltRecord } from './record.js';

/** Preparation uncovers what corrosion hid: the wall that was left is the one that the repair stands on. */
export function wallPoint({ case: { defect, pipe } }: Designed, { survey }: AsBuiltRecord): AsBuiltPoint {
  if (survey === undefined) return notShown('wall', 'nobody measured the wall after the steel was prepared');
  if (!reaches(pipe.wallThickness, survey.leastWall))
    return notShown('wall', 'the reading is more than the wall that the pipe was made with: measure again');
  const lostAt = (wall: Length): number => missingTo(wall, pipe.wallThickness);
  if (isFarBeyond(lostAt(defect.remainingWall), lostAt(survey.leastWall)))
    return notShown(
      'wall',
      'the prepared steel has lost less than half of what the repair is designed for: see that this is the place, and measure again',
    );
  // Both readings may be off by as much, so that one is held to the other as it was read.
  return reaching('wall', { name: 'wall', kind: 'length', value: survey.leastWall }, defect.remainingWall);
}

/** Every opening that preparation uncovered, whether the design knows of one or not. */
export function openingPoints(design: Designed, record: AsBuiltRecord): AsBuiltPoint[] {
  const { slot } = design.case.defect;
  return slot === undefined ? [...holePoint(design, record), ...unknownSlot(record)] : slotPoints(slot, record);
}

/** Only a slot that the design knows has laminate over it that holds one. */
function unknownSlot({ survey }: AsBuiltRecord): AsBuiltPoint[] {
  if (survey?.slot === undefined) return [];
  const { axialLength, circumferentialWidth } = survey.slot;
  const size = Math.max(axialLength, circumferentialWidth) as Length;
  if (size === 0) return [];
  return [
    {
      point: 'slot',
      verdict: 'does not meet',
      text: 'preparation opened a slot that the design knows nothing of: design the repair of a slot',
      found: { name: 'slot, its longer side', kind: 'length', value: size },
    },
  ];
}

/**
 * A hole that has opened under the tool is held by less than the laminate over it was made for; where the design knows of
 * none, any hole is too large.
 */
function holePoint({ case: { defect } }: Designed, { survey }: AsBuiltRecord): AsBuiltPoint[] {
  const largest = defect.holeDiameter ?? (0 as Length);
  const isKnown = defect.holeDiameter !== undefined;
  if (survey?.hole === undefined)
    return isKnown ? [notShown('hole', 'nobody measured the hole after the steel was prepared')] : [];
  if (!isKnown && survey.hole === 0) return [];
  const size: Amount = { name: 'hole', kind: 'length', value: survey.hole };
  const limit: Amount = { name: 'largest hole', kind: 'length', value: largest, toward: 'down' };
  if (reaches(largest, survey.hole))
    return [{ point: 'hole', verdict: 'meets', text: 'the hole is no larger than designed for', found: size, limit }];
  const shortfall: Amount = { name: 'hole, too large by', kind: 'length', value: missingTo(largest, survey.hole) };
  const text = isKnown
    ? 'the hole is larger than the repair was designed for'
    : 'preparation opened a hole that the design knows nothing of: design the repair of a leak';
  return [{ point: 'hole', verdict: 'does not meet', text, found: size, limit, shortfall }];
}

/** A slot that is longer or wider than designed for; a round hole beside it is one that the design does not know. */
function slotPoints(designed: Slot, { survey }: AsBuiltRecord): AsBuiltPoint[] {
  if (survey?.slot === undefined)
    return [notShown('slot', 'nobody measured the opening of the slot after the steel was prepared')];
  const points: AsBuiltPoint[] = [];
  for (const [name, found, largest] of [
    ['slot along the pipe', survey.slot.axialLength, designed.axialLength],
    ['slot round the pipe', survey.slot.circumferentialWidth, designed.circumferentialWidth],
  ] as const) {
    const size: Amount = { name, kind: 'length', value: found };
    const limit: Amount = { name: `largest ${name}`, kind: 'length', value: largest, toward: 'down' };
    if (reaches(largest, found)) {
      points.push({
        point: 'slot',
        verdict: 'meets',
        text: `the ${name} is no larger than designed for`,
        found: size,
        limit,
      });
      continue;
    }
    const shortfall: Amount = { name: `${name}, too large by`, kind: 'length', value: missingTo(largest, found) };
    const text = `the ${name} is larger than the repair was designed for`;
    points.push({ point: 'slot', verdict: 'does not meet', text, found: size, limit, shortfall });
  }
  if ((survey.hole ?? 0) > 0)
    points.push({
      point: 'slot',
      verdict: 'does not meet',
      text: 'preparation opened a hole beside the slot that the design knows nothing of: run the design again',
    });
  return points;
}

import { step } from '../../formula/index.js';
import type { Length, Ratio } from '../../quantity/index.js';
import { bendLineRadius, overlapOnBend } from '../../wrap/index.js';
import type { Workbook } from '../job/workbook.js';

/** Overlap of tape along the inside of a bend, where its turns close up; the bend is wider than what it lies on. */
export function overlapAlongInside(
  { recorder }: Workbook,
  overlap: Ratio,
  bend: { readonly bendRadius: Length; readonly outsideDiameter: Length },
): Ratio {
  const inside = { ...bend, line: 'inside' as const };
  const lineRadius = step(recorder, 'wrap/bend-line-radius', bendLineRadius, inside, 'inside');
  const turns = { overlap, ...bend, lineRadius };
  return step(recorder, 'wrap/overlap-on-bend', overlapOnBend, turns, 'along the inside of the bend');
}

import { step } from '../../formula/index.js';
import { defectCircleDiameter } from '../../pipe/index.js';
import type { Length } from '../../quantity/index.js';
import type { Defect, Slot } from '../case/case.js';
import type { Workbook } from '../job/workbook.js';

/** Whether the pipe leaks as it was found. */
export function leaksToday({ kind }: Defect): boolean {
  return kind === 'through-wall hole' || kind === 'through-wall slot';
}

/** The circle round the opening as it is today, which whatever seals it has to cover; nothing where its size is not stated. */
export function openingToday(work: Workbook): Length | undefined {
  const { holeDiameter, slot } = work.case.defect;
  return slot === undefined ? holeDiameter : circleRound(work, slot, 'slot as it is today');
}

/** The circle through the corners of a slot. */
export function circleRound(work: Workbook, { axialLength, circumferentialWidth }: Slot, purpose: string): Length {
  const corners = { defectLength: axialLength, defectWidth: circumferentialWidth };
  return step(work.recorder, 'pipe/defect-circle-diameter', defectCircleDiameter, corners, purpose);
}

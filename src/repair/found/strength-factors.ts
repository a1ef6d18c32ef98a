import { need, type Workbook } from '../job/workbook.js';

/** How much of its strength the pipe may use: by the code of the line, by a safety factor, or by both. One is there. */
export interface StrengthFactors {
  readonly designFactor: number | undefined;
  readonly safetyFactor: number | undefined;
}

/** The factors that the case states; nothing where it states neither. */
export function statedFactors(work: Workbook): StrengthFactors | undefined {
  const { designFactor, safetyFactor } = work.case.assessment ?? {};
  return designFactor === undefined && safetyFactor === undefined ? undefined : { designFactor, safetyFactor };
}

/** The factors that the case states; without one it is asked for what `why` rests on. */
export function neededFactors(work: Workbook, why: string): StrengthFactors | undefined {
  return statedFactors(work) ?? need(work, 'assessment.designFactor', why, 'the code of the line');
}

import type { GaugePressure, Length } from '../../quantity/index.js';
import type { RepairCase } from '../case/case.js';
import type { LaminateCriterion } from '../design/criteria.js';
import type { Candidate } from '../design/design.js';
import type { Workbook } from '../job/workbook.js';
import type { ThicknessJob } from './loads.js';

/** A field of the case that a method cannot do without. */
export interface MissingField {
  /** Path in the case: `pipe.material.allowableStress`. */
  readonly field: string;
  readonly what: string;
}

/** One way to find the thickness of the laminate. */
export interface ThicknessRecord {
  /** What the method needs and the case does not give. */
  readonly needs: (repairCase: RepairCase) => MissingField | undefined;
  /** A thickness for each way in which the method can govern. Only for a case that has what the method needs. */
  readonly thickness: (work: Workbook, job: ThicknessJob) => Candidate<Length, LaminateCriterion>[];
  /** The pressures that a laid thickness resists, by the same lines. */
  readonly resistance: (
    work: Workbook,
    job: ThicknessJob,
    laminateThickness: Length,
  ) => Candidate<GaugePressure, LaminateCriterion>[];
}

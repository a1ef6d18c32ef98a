import type { Modulus } from '../../quantity/index.js';
import { practice } from '../../rules/index.js';
import { assume, type Workbook } from '../job/workbook.js';

/** Modulus of the pipe: as given, or that of carbon steel, listed as assumed. */
export function pipeModulus(work: Pick<Workbook, 'case' | 'assumed'>): Modulus {
  return assume(work, work.case.pipe.material.modulus, practice.modulusOfSteel);
}

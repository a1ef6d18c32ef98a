import { need, type Workbook } from '../job/workbook.js';
import { askForHazards } from './hazards.js';
import { keepCarbonOffSteel } from './isolating-layer.js';
import { questions } from './questions.js';
import { tellOfSurge } from './surge.js';

/** What a design to sign needs beside its numbers; whatever is open keeps the numbers and takes the verdict. */
export function askBeforeSigning(work: Workbook): void {
  const { stated } = work;
  for (const { field, why, askWhom, isOpen } of questions) if (isOpen(stated)) need(work, field, why, askWhom);
  askForHazards(work);
  tellOfSurge(work);
  keepCarbonOffSteel(work);
}

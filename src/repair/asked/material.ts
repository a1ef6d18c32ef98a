import { saysNothing } from '../case/says-nothing.js';
import { need, type Workbook } from '../job/workbook.js';

/** The name is all that tells steel from cast iron or plastic, and whose strength the case states. */
export function askForMaterial(work: Workbook): void {
  const { name } = work.case.pipe.material;
  if (!saysNothing(name)) return;
  need(
    work,
    'pipe.material.name',
    `"${name}" names no material: only the name says that the pipe is of steel, and of which. Its grade and standard, or where no paper tells them "carbon steel" with who found that and by which test, beside the strength that the code of the line allows for a steel of no known grade`,
    'the inspector of the line: mill certificate, marking or a test of the steel',
  );
}

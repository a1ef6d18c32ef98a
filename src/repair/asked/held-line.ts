import { need, type Workbook } from '../job/workbook.js';

/** Heat lengthens a free line and pushes a held one: nobody sees which it is from the pipe at the defect. */
export function askForHeldLine(work: Workbook): void {
  if (work.case.loads.heldLine !== undefined) return;
  need(
    work,
    'loads.heldLine',
    'a line that soil or anchors hold along itself pushes when it warms up and pulls when it cools down: the temperature at which it was tied in, or that it is free to move',
    'the stress engineer of the line',
  );
}

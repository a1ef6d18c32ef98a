import { need, type Workbook, warn } from '../job/workbook.js';

/** Heat lengthens a free line and pushes a held one: nobody sees which it is from the pipe at the defect. */
export function askForHeldLine(work: Workbook): void {
  const { loads, service } = work.case;
  if (loads.heldLine === undefined)
    need(
      work,
      'loads.heldLine',
      'a line that soil or anchors hold along itself pushes when it warms up and pulls when it cools down: the temperature at which it was tied in, or that it is free to move',
      'the stress engineer of the line',
    );
  else if (loads.heldLine !== 'none' && service.lowestTemperature === undefined)
    need(
      work,
      'service.lowestTemperature',
      'a line that is held along itself pulls most when it is coldest: the lowest temperature that its steel reaches in service, in winter and with the line shut in',
      'whoever operates the line',
    );
  if (loads.heldLine === 'none' && loads.soil !== 'none')
    warn(
      work,
      'The case says that the line is free to move along itself, and it lies in soil, which holds a line over its length: then heat makes it push and cold pull. Have it shown that it moves, or state loads.heldLine with the temperature at which it was tied in.',
    );
}

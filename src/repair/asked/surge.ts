import { decide } from '../../formula/index.js';
import { exactly, line } from '../../quantity/index.js';
import { need, type Workbook, warnOwner } from '../job/workbook.js';

/** A surge above the design pressure is what the repair is sized for, and nobody reads over that. */
export function askForSurge(work: Workbook): void {
  const { stated, case: sized } = work;
  if (stated.service.surge === undefined) {
    need(
      work,
      'service.surge',
      'a pump that starts or a valve that shuts can lift the pressure above that of the design: the surge, or that the design pressure holds it',
      'the process engineer of the line',
    );
  }
  const [sizedFor, { designPressure }] = [sized.service.designPressure, stated.service];
  if (sizedFor === designPressure) return;
  const surge = exactly('surge', 'gauge pressure', sizedFor);
  const design = exactly('design pressure', 'gauge pressure', designPressure);
  decide(work.recorder, line('designed for {0}', surge), 'the surge is above the design pressure of the case');
  warnOwner(
    work,
    line(
      'The surge of {0} is above the design pressure of {1}: wall, laminate, bond and pressure test are all designed for the surge. Between surges the line stays at its design pressure.',
      surge,
      design,
    ),
  );
}

import { saysNothing } from '../case/says-nothing.js';
import { type Workbook, warnCrew } from '../job/workbook.js';

/** Carbon is nobler than steel: where the two touch in the wet, the steel is eaten away under the wrap. */
export function keepCarbonOffSteel(work: Workbook): void {
  const { fibre, isolatingLayer } = work.case.laminate;
  if (fibre !== 'carbon' || saysNothing(isolatingLayer)) return;
  warnCrew(
    work,
    'wrap',
    `The fibre is carbon: first lay ${isolatingLayer} on all the steel, beyond both ends of the wrap. Carbon that touches steel: stop, take it off again.`,
  );
}

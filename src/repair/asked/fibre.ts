import { saysNothing } from '../case/says-nothing.js';
import { need, type Workbook, warnCrew } from '../job/workbook.js';

/** Carbon is nobler than steel: where the two touch in the wet, the steel is eaten away under the wrap. */
export function askForFibre(work: Workbook): void {
  const { fibre, isolatingLayer } = work.case.laminate;
  if (fibre === undefined) {
    need(
      work,
      'laminate.fibre',
      'carbon on steel corrodes the steel where nothing lies between them: glass or carbon',
      'the maker of the repair system',
    );
    return;
  }
  if (fibre !== 'carbon') return;
  if (saysNothing(isolatingLayer)) {
    need(
      work,
      'laminate.isolatingLayer',
      'the fibre is carbon: what keeps it off the steel, as the system was qualified',
      'the maker of the repair system: qualification report',
    );
    return;
  }
  warnCrew(
    work,
    'wrap',
    `The fibre is carbon: first lay ${isolatingLayer} on all the steel, beyond both ends of the wrap. Carbon that touches steel: stop, take it off again.`,
  );
}

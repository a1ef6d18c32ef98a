import { practice } from '../../rules/index.js';
import { saysNothing } from '../case/says-nothing.js';
import { need, type Workbook, warnCrew } from '../job/workbook.js';

const WHO = 'the maker of the repair system: qualification report';

/** Carbon is nobler than steel: where the two touch in the wet, the steel is eaten away under the wrap. */
export function askForFibre(work: Workbook): void {
  const { fibre, isolatingLayer, hoopModulus, axialModulus } = work.case.laminate;
  if (fibre === undefined) {
    need(
      work,
      'laminate.fibre',
      'carbon on steel corrodes the steel where nothing lies between them: glass or carbon',
      'the maker of the repair system',
    );
    return;
  }
  if (fibre === 'glass' && Math.max(hoopModulus, axialModulus) <= practice.stiffestGlass.value) return;
  if (saysNothing(isolatingLayer)) {
    const why =
      fibre === 'carbon'
        ? 'the fibre is carbon: what keeps it off the steel, as the system was qualified'
        : 'the fibre is called glass, and the laminate is stiffer than glass alone makes one: what keeps the carbon in it off the steel, as the system was qualified';
    need(work, 'laminate.isolatingLayer', why, WHO);
    return;
  }
  warnCrew(
    work,
    'wrap',
    `${fibre === 'carbon' ? 'The fibre is carbon' : 'The fibre is as stiff as carbon'}: first lay ${isolatingLayer} on all the steel, beyond both ends of the wrap. Carbon that touches steel: stop, take it off again.`,
  );
}

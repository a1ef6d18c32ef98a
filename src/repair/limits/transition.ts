import { reaches } from '../../numeric/index.js';
import { need, type Workbook } from '../job/workbook.js';
import { coldestWhileCuring } from '../mix-and-cure/steel-temperatures.js';

/** The transition of a sample says nothing of a laminate that cures colder: that one softens earlier, and nobody knows how much. */
export function checkTransition(work: Workbook): void {
  const { laminate, site } = work.case;
  const { transitionCuredAt } = laminate;
  if (transitionCuredAt === undefined || reaches(coldestWhileCuring(site), transitionCuredAt)) return;
  need(
    work,
    'laminate.transitionCuredAt',
    'the steel gets colder while the laminate cures than the sample of its transition was cured: the transition temperature after the cure of the site with the temperature of that cure, or a heated cure (`site.history`)',
    'the maker of the repair system: a sample cured as cold as the site',
  );
}

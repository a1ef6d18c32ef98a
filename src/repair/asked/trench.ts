import { exactly, line } from '../../quantity/index.js';
import { type Workbook, warnCrew } from '../job/workbook.js';

/** Whoever wraps a buried line stands in a trench beside a pipe that nothing holds up any more. */
export function warnOfTrench(work: Workbook): void {
  const { soil } = work.case.loads;
  if (soil === 'none') return;
  warnCrew(
    work,
    'permit',
    line(
      'Buried {0} deep: find other services, dig by hand, let nobody into the trench before its sides are held, its water out and its air tested; the freed pipe bends under its own weight: hold it up.',
      exactly('cover', 'length', soil.cover),
    ),
  );
}

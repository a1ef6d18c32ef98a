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
      'The line is buried {0} deep, and the trench goes below the pipe. Find the other services before anybody digs, and dig by hand beside the line. Nobody goes into the trench until its sides are battered or held, spoil and traffic are kept back from its edge, water is pumped out, the air is tested and a ladder stands in it: sides fall in without a sign. The freed pipe carries its own bend and weight: hold it up, and free no more of it than its engineer allows.',
      exactly('cover', 'length', soil.cover),
    ),
  );
}

import { exactly, line, type Volume } from '../../quantity/index.js';
import { type Workbook, warnCrew } from '../job/workbook.js';

/** A line that carries gas is hung for gas: the liquid of a test may weigh more than the pipe. */
export function warnOfWeight(work: Workbook, volume: Volume): void {
  if (work.case.service.phase === 'liquid') return;
  warnCrew(
    work,
    'pressure-test',
    line(
      'The line carries gas, and the test fills it with {0} of liquid; a cubic metre of water weighs a tonne. Pipe, supports and hangers carry that weight while it is full: nobody fills it before the engineer of the line has signed that they do. Drain it with a vent open.',
      exactly('volume under test', 'volume', volume),
    ),
  );
}

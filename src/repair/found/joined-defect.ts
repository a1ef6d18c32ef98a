import { exactly, line } from '../../quantity/index.js';
import { type Workbook, warn } from '../job/workbook.js';

/** The reader has to know that another defect is designed for than the one that stands first in the case. */
export function warnOfJoined(work: Workbook): void {
  const { defect } = work.case;
  if (defect.neighbours === work.stated.defect.neighbours) return;
  const { axialLength, circumferentialWidth, remainingWall } = defect;
  warn(
    work,
    line(
      'Neighbouring losses act as one with the defect: the repair is designed for one of {0} along and {1} round the pipe with {2} of wall left.',
      exactly('length', 'length', axialLength),
      exactly('width', 'length', circumferentialWidth),
      exactly('least wall', 'length', remainingWall),
    ),
  );
}

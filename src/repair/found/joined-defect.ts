import { type Amount, exactly, line } from '../../quantity/index.js';
import type { NeighbouringLoss } from '../case/case.js';
import { neighboursOf } from '../case/neighbours-of.js';
import { type Workbook, warn } from '../job/workbook.js';

type Extents = Pick<NeighbouringLoss, 'axialLength' | 'circumferentialWidth' | 'remainingWall'>;

/** The reader has to know that other losses are judged than those that stand in the case. */
export function warnOfJoined(work: Workbook): void {
  const { defect: stated } = work.stated;
  const { defect } = work.case;
  // Whatever joins makes the defect longer.
  if (defect.axialLength !== stated.axialLength)
    warn(
      work,
      line(
        'Neighbouring losses act as one with the defect: the repair is designed for one of {0} along and {1} round the pipe with {2} of wall left.',
        ...extentsOf(defect),
      ),
    );
  const asRead = neighboursOf(stated);
  for (const apart of neighboursOf(defect))
    if (!asRead.some((read) => isAlike(read, apart)))
      warn(
        work,
        line(
          'Neighbouring losses that lie apart from the defect act as one with each other: they are judged as one of {0} along and {1} round the pipe with {2} of wall left.',
          ...extentsOf(apart),
        ),
      );
}

function isAlike(one: Extents, other: Extents): boolean {
  return (
    one.axialLength === other.axialLength &&
    one.circumferentialWidth === other.circumferentialWidth &&
    one.remainingWall === other.remainingWall
  );
}

function extentsOf({ axialLength, circumferentialWidth, remainingWall }: Extents): Amount[] {
  return [
    exactly('length', 'length', axialLength),
    exactly('width', 'length', circumferentialWidth),
    exactly('least wall', 'length', remainingWall),
  ];
}

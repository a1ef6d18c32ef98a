import { metalLossDepth } from '../../pipe/index.js';
import { need, type Workbook } from '../job/workbook.js';

/** Causes that leave a hollow on the outside, under the wrap. */
const FROM_OUTSIDE = new Set(['external corrosion', 'mechanical damage']);

/** A laminate over a hollow hangs free there and carries nothing into the pipe: filler makes it level. */
export function askForFill(work: Workbook): void {
  const { defect, pipe, filler } = work.case;
  if (defect.kind !== 'metal loss' || !FROM_OUTSIDE.has(defect.cause)) return;
  const { remainingWall } = defect;
  const depth = metalLossDepth({ wallThickness: pipe.wallThickness, remainingWall });
  if (depth === 0) return;
  if (filler === 'none')
    need(
      work,
      'filler',
      'the loss is a hollow on the outside, and the laminate would hang free over it: filler at least as thick as it is deep',
      'whoever builds up the surface',
    );
  else if (filler.thicknessOverDefect < depth)
    need(
      work,
      'filler.thicknessOverDefect',
      'the filler over the defect is thinner than the hollow is deep, and the laminate would hang free over the rest',
      'whoever builds up the surface',
    );
}

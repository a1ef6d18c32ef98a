import { metalLossDepth } from '../../pipe/index.js';
import { leavesHollow } from '../found/hollow.js';
import { need, type Workbook } from '../job/workbook.js';

/** A laminate over a hollow hangs free there, round a hole too, and carries nothing into the pipe: filler makes it level. */
export function askForFill(work: Workbook): void {
  const { defect, pipe, filler } = work.case;
  if (!leavesHollow(defect)) return;
  const { remainingWall } = defect;
  const depth = metalLossDepth({ wallThickness: pipe.wallThickness, remainingWall });
  if (depth === 0) return;
  const hollow =
    defect.cause === 'unknown'
      ? 'nobody says whether the loss is a hollow on the outside'
      : 'the loss is a hollow on the outside';
  if (filler === 'none')
    need(
      work,
      'filler',
      `${hollow}, and the laminate would hang free over it: filler at least as thick as it is deep`,
      'whoever builds up the surface',
    );
  else if (filler.thicknessOverDefect < depth)
    need(
      work,
      'filler.thicknessOverDefect',
      `${hollow}, the filler over the defect is thinner than the loss is deep, and the laminate would hang free over the rest`,
      'whoever builds up the surface',
    );
}

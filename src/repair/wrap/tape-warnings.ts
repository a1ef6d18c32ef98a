import { step } from '../../formula/index.js';
import { exactly, line, roundedUp } from '../../quantity/index.js';
import {
  leadAngleSteep,
  minimumLayersWithoutMargin,
  overlapForNextLayer,
  passesSavedBySlightlyMoreOverlap,
} from '../../wrap/index.js';
import type { TapeStock } from '../case/case.js';
import type { LaminateDesign } from '../design/design.js';
import { type Workbook, warn, warnCrew } from '../job/workbook.js';

/** What the crew or the buyer could do better with this tape. */
export function warnOfTape(
  work: Workbook,
  { overlap, width }: TapeStock,
  { plies, wrappedDiameter }: LaminateDesign,
  layersPerPass: number,
): void {
  const overlapped = exactly('overlap', 'ratio', overlap);
  const layers = exactly('layers in a pass', 'count', layersPerPass);
  if (minimumLayersWithoutMargin({ overlap })) {
    // Whoever lays the tape holds the overlap: the others are for whoever orders it.
    warnCrew(
      work,
      'wrap',
      line(
        'An overlap of {0} is exactly what {1} layers need: any drift leaves a strip one layer short. Order it as a minimum, with a tolerance upwards only.',
        overlapped,
        layers,
      ),
    );
  }
  if (passesSavedBySlightlyMoreOverlap({ requiredLayers: plies, overlap })) {
    const next = step(work.recorder, 'wrap/overlap-for-next-layer', overlapForNextLayer, { overlap });
    warn(
      work,
      line(
        'An overlap of {0} instead of {1} would lay {2} layers in each pass instead of {3}, and save at least one pass.',
        roundedUp('overlap that saves a pass', 'ratio', next.overlap),
        overlapped,
        exactly('layers in a pass then', 'count', next.layers),
        layers,
      ),
    );
  }
  if (leadAngleSteep({ tapeWidth: width, overlap, meanDiameter: wrappedDiameter })) {
    warn(
      work,
      'The tape is so wide for this pipe that it runs steeply: its stiffness round the pipe is no longer that of the ply, and the laminate is thicker for it. A narrower tape saves plies.',
    );
  }
}

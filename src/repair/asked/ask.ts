import type { Workbook } from '../job/workbook.js';
import { askForAttachment } from './attachment.js';
import { askWhatIsCalledOtherwise } from './called.js';
import { askForCold } from './cold.js';
import { askForCracks } from './cracks.js';
import { askForFibre } from './fibre.js';
import { askForHazards } from './hazards.js';
import { askForHeldLine } from './held-line.js';
import { askForFill } from './hollow.js';
import { askForLeak } from './leak.js';
import { askForLift } from './lift.js';
import { askForMaterial } from './material.js';
import { askForNeighbours } from './neighbours.js';
import { askForProtection } from './protection.js';
import { askForRating } from './rating.js';
import { askForSample } from './sample.js';
import { askForSpan } from './span.js';
import { askForSurge } from './surge.js';
import { warnOfTitle } from './titled.js';
import { warnOfTrench } from './trench.js';

/**
 * What a design to sign needs beside its numbers, and a first screening does without: whatever is open keeps every number
 * and takes the verdict.
 */
export function askBeforeSigning(work: Workbook): void {
  askForSurge(work);
  askForHazards(work);
  askWhatIsCalledOtherwise(work);
  askForMaterial(work);
  askForLeak(work);
  askForCold(work);
  askForCracks(work);
  askForAttachment(work);
  askForNeighbours(work);
  askForSample(work);
  askForFibre(work);
  askForFill(work);
  askForProtection(work);
  askForLift(work);
  askForRating(work);
  askForHeldLine(work);
  askForSpan(work);
  warnOfTitle(work);
  warnOfTrench(work);
}

import { barcolReadings, hardnessToReach } from '../../acceptance/index.js';
import { step } from '../../formula/index.js';
import { practice } from '../../rules/index.js';
import type { HardnessDesign } from '../design/design-work.js';
import { assume, trial, type Workbook } from '../job/workbook.js';

/** The hardness that lets the repair be accepted, and how many readings show it; none where nobody stated the qualified one. */
export function planHardness(work: Workbook): HardnessDesign | undefined {
  const { acceptance } = work.case;
  if (acceptance === undefined) return undefined;
  const { hardnessScale: scale, qualifiedHardness: qualified } = acceptance;
  const { leastMean, leastSingle } = step(work.recorder, 'acceptance/hardness-to-reach', hardnessToReach, {
    qualifiedHardness: qualified,
    meanShare: assume(work, undefined, practice.leastMeanHardness),
    singleShare: assume(work, undefined, practice.leastSingleHardness),
  });
  const readings = scale === 'Shore D' ? practice.shoreReadings.value : barcolReadingsFor(work, leastMean);
  return { scale, qualified, leastMean, leastSingle, ...(readings === undefined ? {} : { readings }) };
}

/** By the softest mean that passes, which needs most readings. Below the table of the scale nobody can say how many. */
function barcolReadingsFor(work: Workbook, hardness: number): number | undefined {
  const read = () => step(work.recorder, 'acceptance/barcol-readings', barcolReadings, { hardness });
  return trial(work, 'hardness readings', read).result;
}

import { exactly, line } from '../../quantity/index.js';
import { practice } from '../../rules/index.js';
import type { Seal } from '../case/case.js';
import { type Workbook, warnCrew } from '../job/workbook.js';

/** Warns of each safety factor that leaves a live leak next to nothing: a person stands beside it. */
export function warnOfSealFactors(work: Workbook, { band, sheet, pipeFactor }: Seal): void {
  warnOf(work, 'seal.band.factor', band.factor, 'tears');
  warnOf(work, 'seal.band.holdingFactor', band.holdingFactor, 'lets go');
  warnOf(work, 'seal.sheet.factor', sheet.factor, 'bends into the hole');
  warnOf(work, 'seal.pipeFactor', pipeFactor, 'presses the thinned pipe in');
}

function warnOf(work: Workbook, path: string, factor: number, fails: string): void {
  const { name, value } = practice.leastSealFactor;
  if (factor >= value) return;
  const text = `${path} is {0}, less than a seal keeps ({1}): a small slip in what was measured, and it ${fails}.`;
  warnCrew(work, 'seal', line(text, exactly(path, 'number', factor), exactly(name, 'number', value)));
}

import { existsSync, readFileSync } from 'node:fs';
import { listed } from './listed.js';
import { byNote } from './route/open-readings.js';
import type { Survey } from './survey.js';

/** What a run of both routes found, as it is committed. */
export interface WholeJobSummary {
  /** Seed of the first case; each next one has the next. */
  readonly seed: number;
  readonly cases: number;
  readonly verdicts: Readonly<Record<string, number>>;
  /** Designs that were made, by rule set, defect, form, method, load and fitting. */
  readonly designed: Readonly<Record<string, number>>;
  readonly numbersCompared: number;
  readonly wordsCompared: number;
  /** Leaves that are listed with their reason and not compared. */
  readonly notCompared: number;
  readonly largestRelativeDifference: number;
  readonly different: number;
  readonly otherVerdicts: number;
  /** Cases in which the library asks for what is missing where the second route finds a reason. */
  readonly askedFirst: number;
  readonly because: readonly string[];
  /** Readings on which note and library disagree; the run follows the library there. */
  readonly openReadings: string;
}

export const wholeJobSummaryPath = new URL('summary.json', import.meta.url);

export function readWholeJobSummary(): WholeJobSummary | undefined {
  return existsSync(wholeJobSummaryPath) ? JSON.parse(readFileSync(wholeJobSummaryPath, 'utf8')) : undefined;
}

function inOrder(counts: Readonly<Record<string, number>>): Record<string, number> {
  return Object.fromEntries(Object.entries(counts).sort(([a], [b]) => (a < b ? -1 : 1)));
}

export function summaryOf(seed: number, found: Survey): WholeJobSummary {
  return {
    seed,
    cases: found.cases,
    verdicts: inOrder(found.verdicts),
    designed: inOrder(found.designed),
    numbersCompared: found.compared,
    wordsCompared: found.words,
    notCompared: found.listed,
    largestRelativeDifference: Number(found.largest.toPrecision(2)),
    different: found.different.length,
    otherVerdicts: found.otherVerdicts.length,
    askedFirst: found.askedFirst.length,
    because: [...new Set(listed.map(({ because }) => because))],
    openReadings: Object.keys(byNote).join(', '),
  };
}

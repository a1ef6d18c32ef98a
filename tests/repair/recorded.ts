import { designRepair } from '../../src/repair/index.js';
import { caseOf } from '../faults/answers.js';
import type { CaseFile } from '../faults/cases.js';

/** What the record of a design says, in order: its headings, its decisions, and its formulas, each with what it was for. */
export function recordedOf(file: CaseFile): string[] {
  const { record = [] } = designRepair(caseOf(file), { record: true });
  return record.map((entry) => {
    if (entry.sort === 'heading') return entry.title;
    if (entry.sort === 'decision') return entry.what.text;
    return entry.purpose === undefined ? entry.formula : `${entry.formula}, ${entry.purpose}`;
  });
}

import { readdirSync, readFileSync } from 'node:fs';
import * as z from 'zod';
import { formulaById } from '../../src/registry/index.js';
import { type CaseRecord, caseFile } from '../case.js';
import type { Lookup } from './call.js';
import { type CaseResult, judge } from './judge.js';

const folder = new URL('../cases/', import.meta.url);

/** A file of cases that was read, or what is wrong with it. */
export interface CaseFileReading {
  readonly file: string;
  readonly records: readonly CaseRecord[];
  readonly problem?: string;
}

/** Reads every file of cases, in the order of their names. */
export function readCases(): CaseFileReading[] {
  const files = readdirSync(folder).filter((name) => name.endsWith('.json'));
  return files.sort().map((file) => readCaseText(file, readFileSync(new URL(file, folder), 'utf8')));
}

type Issue = z.core.$ZodIssue;

/** The one issue behind a union that is most to the point: the deepest. */
function deepest(issue: Issue): { readonly path: readonly PropertyKey[]; readonly message: string } {
  if (issue.code !== 'invalid_union') return issue;
  const inner = issue.errors.flatMap((branch) => branch.map(deepest));
  const last = inner.sort((a, b) => b.path.length - a.path.length)[0];
  if (last === undefined) return issue;
  return { path: [...issue.path, ...last.path], message: last.message };
}

/** Reads the text of one file of cases. */
export function readCaseText(file: string, text: string): CaseFileReading {
  let document: unknown;
  try {
    document = JSON.parse(text);
  } catch (error) {
    return { file, records: [], problem: `not JSON: ${error instanceof Error ? error.message : String(error)}` };
  }
  const parsed = caseFile.safeParse(document);
  if (parsed.success) return { file, records: parsed.data };
  const name = (index: unknown): string => {
    const record = Array.isArray(document) ? (document[Number(index)] as { id?: unknown } | undefined) : undefined;
    return typeof record?.id === 'string' ? record.id : `record ${String(index)}`;
  };
  const lines = parsed.error.issues.map(deepest).map(({ path, message }) => {
    const [index, ...rest] = path;
    return `${name(index)}${rest.length === 0 ? '' : ` at ${rest.map(String).join('.')}`}: ${message}`;
  });
  return { file, records: [], problem: lines.join('\n') || z.prettifyError(parsed.error) };
}

/** Ids that stand on more than one record. */
export function repeatedIds(readings: readonly CaseFileReading[]): string[] {
  const ids = readings.flatMap(({ records }) => records.map(({ id }) => id));
  return [...new Set(ids.filter((id, index) => ids.indexOf(id) !== index))];
}

/** Judges every case. */
export function runCases(
  readings: readonly CaseFileReading[] = readCases(),
  lookup: Lookup = formulaById,
): CaseResult[] {
  return readings.flatMap(({ file, records }) => records.map((record) => judge(record, file, lookup)));
}

/** One result in lines of text: each outcome with what was printed and what was computed. */
export function resultText({ record, verdict, outcomes, faults }: CaseResult): string {
  const lines = outcomes.map(({ output, expected, computed, verdict: own, digits, moved, because }) =>
    [
      `  ${output}: printed ${expected}, computed ${computed}: ${own}`,
      digits === undefined ? '' : ` (${digits.agreed.toFixed(1)} of ${digits.printed} digits)`,
      moved === undefined ? '' : `; inputs moved by ${Number(moved.part.toPrecision(2))} of half a last place`,
      because === undefined ? '' : `; ${because}`,
    ].join(''),
  );
  return [`${record.id} (${record.formula}): ${verdict}`, ...lines, ...faults.map((fault) => `  ${fault}`)].join('\n');
}

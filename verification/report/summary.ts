import { type SourceTag, sourceTags } from '../../src/formula/index.js';
import { type CaseClass, caseClasses } from '../case.js';
import { type CaseResult, type Verdict, verdicts } from '../runner/judge.js';
import { caseRows } from './formula-entry.js';
import { hasOwnRoute, isArithmeticOnly, otherHands } from './lines.js';
import type {
  ClassRow,
  CoverageRoom,
  ErratumRow,
  EvidenceCount,
  ExceptionRow,
  FormulaEntry,
  Report,
  RoomRow,
  ToleranceRow,
} from './shape.js';

/** The first page: counts, everything that is not a plain agreement, and the holes. */

export const classMeaning: Readonly<Record<CaseClass, string>> = {
  standard: "the standard's own text or a government text, read",
  handbook: 'a worked example or a table of a handbook',
  dataset: 'measured or tabulated data of another hand',
  library: 'tests or output of another program',
  web: 'a public web page, sheet or secondary copy',
  derivation: 'our own benchmark, reproduced by a second route',
  practice: 'common practice of the trade, no source',
  recalled: 'a value from memory',
};

function tally(of: readonly Verdict[]): Record<Verdict, number> {
  return Object.fromEntries(
    verdicts.map((verdict) => [verdict, of.filter((each) => each === verdict).length]),
  ) as Record<Verdict, number>;
}

const roomOf = (id: string): string => id.split('/')[0] ?? '';

function evidenceCount(formulas: readonly FormulaEntry[]): EvidenceCount {
  const otherHand = formulas.filter(({ lines }) => otherHands(lines).length > 0).length;
  const neither = formulas.filter(({ lines }) => lines.length === 0).length;
  const arithmeticOnly = formulas.filter(({ lines }) => isArithmeticOnly(lines)).length;
  const ownRoute = formulas.length - otherHand - neither;
  return { formulas: formulas.length, otherHand, ownRoute, arithmeticOnly, neither };
}

/** A formula that a design calls and of which no other hand has published a value. */
export const isCalledBare = ({ called, lines }: FormulaEntry): boolean => called && otherHands(lines).length === 0;

function byRoom(formulas: readonly FormulaEntry[]): RoomRow[] {
  return [...new Set(formulas.map(({ id }) => roomOf(id)))].map((room) => {
    const own = formulas.filter(({ id }) => roomOf(id) === room);
    return {
      room,
      ...evidenceCount(own),
      called: own.filter(({ called }) => called).length,
      calledBare: own.filter(isCalledBare).length,
    };
  });
}

export function summary(results: readonly CaseResult[], formulas: readonly FormulaEntry[]): Report['summary'] {
  const classRow = (of: CaseClass): ClassRow => {
    const own = results.filter(({ record }) => record.class === of);
    return { class: of, cases: own.length, byVerdict: tally(own.map(({ verdict }) => verdict)) };
  };
  const tagged = (tag: SourceTag): number => formulas.filter((formula) => formula.tag === tag).length;
  return {
    cases: results.length,
    values: results.reduce((sum, { outcomes }) => sum + outcomes.length, 0),
    byVerdict: tally(results.map(({ verdict }) => verdict)),
    byClass: caseClasses.map(classRow),
    formulas: formulas.length,
    evidence: evidenceCount(formulas),
    byRoom: byRoom(formulas),
    byTag: Object.fromEntries(sourceTags.map((tag) => [tag, tagged(tag)])) as Record<SourceTag, number>,
  };
}

const worstFirst = (a: Verdict, b: Verdict): number => verdicts.indexOf(b) - verdicts.indexOf(a);

/** Every printed value that is not met as it stands, the worst first; a record that cannot be judged is one too. */
export function exceptions(results: readonly CaseResult[]): ExceptionRow[] {
  return results
    .flatMap((result): ExceptionRow[] => {
      const { record, faults } = result;
      const about = { id: record.id, formula: record.formula, class: record.class };
      const broken = faults.map(
        (fault): ExceptionRow => ({
          ...about,
          output: 'record',
          printed: '',
          computed: '',
          verdict: 'fails',
          because: fault,
        }),
      );
      const rows = caseRows(result).filter(({ verdict }) => verdict !== 'agrees');
      return [
        ...broken,
        ...rows.map(({ output, printed, computed, verdict, because }) => ({
          ...about,
          output,
          printed,
          computed,
          verdict,
          because,
        })),
      ];
    })
    .sort((a, b) => worstFirst(a.verdict, b.verdict));
}

export function tolerances(results: readonly CaseResult[]): ToleranceRow[] {
  return results.flatMap(({ record }) => {
    const { expect } = record;
    if ('refused' in expect && typeof expect['refused'] === 'string') return [];
    return Object.entries(
      expect as Readonly<Record<string, { tolerance?: { value: string; reason: string } }>>,
    ).flatMap(([output, { tolerance }]) =>
      tolerance === undefined ? [] : [{ id: record.id, output, tolerance: tolerance.value, reason: tolerance.reason }],
    );
  });
}

export function errata(results: readonly CaseResult[]): ErratumRow[] {
  return results.flatMap(({ record, outcomes }) =>
    record.erratum === undefined
      ? []
      : [
          {
            id: record.id,
            formula: record.formula,
            source: record.source === null ? '' : `${record.source.key}, ${record.source.locator}`,
            printed: record.erratum.printed,
            right: outcomes.map(({ computed }) => computed).join(', '),
            explanation: record.erratum.explanation,
          },
        ],
  );
}

/** Where a case stands in the matrix: under its source, or under its class where no source printed its value. */
function columnOf({ record }: CaseResult): string {
  const { source } = record;
  const own = record.class === 'derivation' || record.class === 'practice' || record.class === 'recalled';
  return own || source === null ? record.class : source.key;
}

const OWN_COLUMNS = [
  'burst tests',
  'dew-point table',
  'psychrolib',
  'derivation',
  'derivation in code',
  'practice',
  'recalled',
];

export function coverage(formulas: readonly FormulaEntry[], results: readonly CaseResult[]): CoverageRoom[] {
  const rooms = [...new Set(formulas.map(({ id }) => roomOf(id)))];
  return rooms.map((room) => {
    const rows = formulas
      .filter(({ id }) => id.startsWith(`${room}/`))
      .map(({ id, lines }) => {
        const cells: Record<string, number> = {};
        for (const result of results) {
          if (result.record.formula !== id) continue;
          const column = columnOf(result);
          cells[column] = (cells[column] ?? 0) + 1;
        }
        for (const { by } of lines)
          for (const part of by.split(', ')) {
            if (part.endsWith('.test.ts')) cells['derivation in code'] = (cells['derivation in code'] ?? 0) + 1;
            else if (OWN_COLUMNS.includes(part)) cells[part] = 1;
          }
        return { formula: id, otherHands: otherHands(lines).length, ownRoute: hasOwnRoute(lines), cells };
      });
    const used = new Set(rows.flatMap(({ cells }) => Object.keys(cells)));
    const columns = [
      ...[...used].filter((column) => !OWN_COLUMNS.includes(column)).sort(),
      ...OWN_COLUMNS.filter((column) => used.has(column)),
    ];
    return { room, columns, rows };
  });
}

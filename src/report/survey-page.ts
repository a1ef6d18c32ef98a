import type { Kind } from '../quantity/index.js';
import type { ScreenedRow, SurveyRow } from '../survey/index.js';
import type { Block } from './document.js';
import { type BandCounts, bandsDrawing } from './drawing/survey-bands.js';
import { surveyAgainstLimit } from './drawing/survey-limit.js';
import { formatToward } from './number.js';
import { chosen, type SheetOptions } from './options.js';
import { render } from './render.js';
import { shownValue } from './shown-value.js';
import { joined, numberIn, preferredUnit } from './units.js';

/** A row that ranks first: where it stands in the file, what it is and what became of it. */
export interface RankedRow {
  readonly line: number;
  readonly id?: string | undefined;
  readonly row: SurveyRow;
  readonly found: ScreenedRow;
}

/** A survey in short, to be drawn. */
export interface SurveyInShort {
  /** Rows by their status. */
  readonly counts: Readonly<Record<ScreenedRow['status'], number>>;
  readonly bands: BandCounts;
  /** Those that rank first, the worst first: all of them are drawn, the first ones listed. */
  readonly worst: readonly RankedRow[];
  /** What makes every row look better than the choices made unasked, and other warnings. */
  readonly warnings: readonly string[];
}

/** Rows that a page lists. */
const LISTED = 25;

/** The drawings of a survey, each by its name. */
export interface SurveyDrawings {
  readonly bands: string;
  readonly limit: string;
}

/** Draws what a survey holds. */
export function surveyDrawings({ counts, bands, worst }: SurveyInShort): SurveyDrawings {
  const readable = totalOf(counts) - counts.refused;
  const points = worst.map(({ row, found: { status } }) => ({ ...row, status }));
  return { bands: bandsDrawing(bands), limit: surveyAgainstLimit(points, readable) };
}

/** A survey on one page: what became of its rows, in pictures, and the rows that rank first. */
export function surveyPage(
  survey: SurveyInShort,
  drawings: SurveyDrawings,
  options: Omit<SheetOptions, 'format'> = {},
): string {
  const all = chosen(options);
  const { counts, worst, warnings } = survey;
  const listed = worst.slice(0, LISTED);
  const blocks: Block[] = [
    { sort: 'title', text: 'Metal losses of a survey' },
    {
      sort: 'table',
      head: ['rows', ...Object.keys(counts)],
      rows: [[String(totalOf(counts)), ...Object.values(counts).map(String)]],
    },
    ...(warnings.length === 0 ? [] : [{ sort: 'list' as const, items: warnings.map((each) => `Warning: ${each}`) }]),
    { sort: 'figures', svgs: [drawings.bands, drawings.limit] },
    { sort: 'heading', level: 2, text: `The ${listed.length} that rank first` },
    {
      sort: 'table',
      head: ['line', 'id', 'what', 'depth', 'length', 'safe pressure', 'at the end of life', 'time left'],
      rows: listed.map(({ line, id = '', row, found }) => [
        String(line),
        id,
        found.status,
        shownValue('length', 'depth', row.defectDepth, all, true),
        shownValue('length', 'length', row.defectLength, all, true),
        orNone('gauge pressure', found.safePressure),
        orNone('gauge pressure', found.safePressureAtEndOfLife),
        orNone('time', found.timeLeft),
      ]),
    },
  ];
  return render(blocks, { ...options, format: 'html' });

  /** Pressures and times down, to the safe side. */
  function orNone(kind: Kind, value: number | undefined): string {
    if (value === undefined) return '-';
    const unit = preferredUnit(kind, kind === 'time' ? 'life' : '', all.units);
    return joined(formatToward(numberIn(kind, value, unit), all.digits, 'down'), unit);
  }
}

function totalOf(counts: SurveyInShort['counts']): number {
  return Object.values(counts).reduce((sum, each) => sum + each, 0);
}

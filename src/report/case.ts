import { shapeFor } from '../repair/case/admit.js';
import type { RepairCase } from '../repair/case/case.js';
import { caseTable } from '../repair/case/table.js';
import type { Field, Fields } from '../repair/case/table-field.js';
import { wordsAt } from '../repair/case/words.js';
import type { Block } from './document.js';
import { listBlocks } from './list.js';
import type { ChosenOptions } from './options.js';
import { shownValue } from './shown-value.js';

/** What the case says, as it was typed where that is known. */
export interface CaseOptions extends ChosenOptions {
  readonly typed?: ReadonlyMap<string, { readonly text: string }> | undefined;
}

/** The parts of the sheet, and the parts of the case that each shows. */
const SECTIONS: readonly (readonly [heading: string, ...parts: (keyof typeof caseTable)[]])[] = [
  ['Pipe and service', 'pipe', 'service', 'line'],
  ['Defect and loads', 'defect', 'loads', 'fitting', 'assessment'],
  ['Repair and laminate', 'repair', 'laminate'],
  ['Tape or sheet', 'wrap'],
  ['Resin mixed on site', 'resin'],
  ['Filler', 'filler'],
  ['Leak seal', 'seal'],
  ['Crew', 'crew'],
  ['Acceptance', 'acceptance'],
  ['Site', 'site'],
];

/** The case as it was given, part by part: what the design started from. */
export function caseBlocks(repairCase: RepairCase, options: CaseOptions): Block[] {
  const given = repairCase as unknown as Readonly<Record<string, unknown>>;
  return SECTIONS.flatMap(([text, ...parts]): Block[] => {
    const section: Section = { rows: [], lists: [], options };
    for (const part of parts) show(caseTable[part], given[part], part, section);
    if (section.rows.length === 0) return [];
    return [{ sort: 'heading', level: 2, text }, { sort: 'rows', rows: section.rows }, ...section.lists];
  });
}

/** What a section gathers: a row for each value, and each list as a table below them. */
interface Section {
  readonly rows: string[][];
  readonly lists: Block[];
  readonly options: CaseOptions;
}

function show(field: Field, value: unknown, path: string, section: Section): void {
  if (value === undefined) return;
  if (typeof value === 'object' && value !== null && field.kind !== 'list') {
    showFields(field, value, path, section);
    return;
  }
  const [label] = wordsAt(path);
  if (field.kind === 'list' && field.row.kind === 'block' && Array.isArray(value)) {
    section.lists.push(...listBlocks({ name: label, columns: columnsOf(field.row.fields) }, value, section.options));
    return;
  }
  section.rows.push([
    label,
    section.options.typed?.get(path)?.text.trim() ?? shown(field, value, path, section.options),
  ]);
}

function showFields(field: Field, held: object, path: string, section: Section): void {
  const given = held as Readonly<Record<string, unknown>>;
  const shape = field.kind === 'either' ? shapeFor(field, held) : field;
  if (shape?.kind === 'variants') {
    const word = given[shape.by];
    show({ kind: 'text' }, word, `${path}.${shape.by}`, section);
    showEach(shape.variants[String(word)] ?? {}, given, path, section);
  } else if (shape?.kind === 'block') showEach(shape.fields, given, path, section);
}

function showEach(fields: Fields, given: Readonly<Record<string, unknown>>, path: string, section: Section): void {
  for (const [key, field] of Object.entries(fields)) show(field, given[key], `${path}.${key}`, section);
}

function shown(field: Field, value: unknown, path: string, options: CaseOptions): string {
  if (Array.isArray(value)) return value.join(', ') || 'none';
  // Of several shapes only the amount comes here; the words of a choice that are numbers are counts.
  const kind = field.kind === 'either' ? (shapeFor(field, value)?.kind ?? '') : field.kind;
  return shownValue(kind === 'choice' ? 'count' : kind, path.split('.').at(-1) ?? '', value, options, false);
}

function columnsOf(fields: Fields): Record<string, never> {
  return Object.fromEntries(Object.entries(fields).map(([key, { kind }]) => [key, kind as never]));
}

import type { RepairDesign } from '../repair/design/design.js';
import { amountText, reasonItem } from './answer.js';
import { answerInShort, type ShortRow } from './answer-in-short.js';
import { characterDrawing } from './drawing/characters.js';
import { type ChosenOptions, chosen, type SheetOptions } from './options.js';
import { wrapText } from './text.js';
import { warningOnSheet } from './warning.js';

/** How the first page of a design is written. */
export interface FirstPageOptions extends Omit<SheetOptions, 'format'> {
  /** The fields of the case as they were typed, by path. */
  readonly typed?:
    | ReadonlyMap<
        string,
        {
          /** As typed, with its unit. */
          readonly text: string;
        }
      >
    | undefined;
  /** Files that hold the rest, in one folder. */
  readonly files?:
    | {
        /** The folder, as it is to be printed. */
        readonly folder: string;
        /** Names of the files in it. */
        readonly names: readonly string[];
      }
    | undefined;
}

const WIDTH = 100;
/** Lines that a screen takes together with what npm prints before them. */
const HEIGHT = 58;

/**
 * A design on one screen: verdict, drawing, answer, warnings, what was assumed, and where the rest stands. What does not fit
 * is counted and never left out in silence.
 *
 * @param design made or not
 * @param options how it is written, and which files hold the rest
 * @returns text of at most 58 lines of at most 100 characters, that ends with a line break
 */
export function firstPage(design: RepairDesign, options: FirstPageOptions = {}): string {
  const all = chosen(options);
  const head = headLines(design, all);
  const answer = answerLines(answerInShort(design, all));
  const files = fileLines(options.files);
  const assumed = assumedLines(design, all);
  const warnings = design.warnings.map((warning) => warningOnSheet(warning, all, options.typed));
  const stopped = stopLines(design, all);
  const taken = [head, answer, files, assumed].reduce((sum, lines) => sum + lines.length, 0);
  const room = HEIGHT - taken - (stopped.length === 0 ? 0 : 1);
  const shownStop = fitted(stopped, room, 'more, in the whole sheet (--full)');
  const shownWarnings = fitted(
    warnings.map((text) => item(text)),
    room - shownStop.length - 2,
    'more, in the whole sheet (--full): read them before you build',
  );
  const warned = warnings.length === 0 ? ['', 'No warning.'] : ['', `WARNINGS (${warnings.length})`, ...shownWarnings];
  const parts = [...head, ...shownStop, ...answer, ...warned, ...assumed, ...files];
  return `${parts.join('\n')}\n`;
}

function item(text: string): string[] {
  return wrapText(text, WIDTH - 2).map((line, index) => `${index === 0 ? '- ' : '  '}${line}`);
}

/** Whole items as long as they fit; the last line counts the rest. */
function fitted(items: readonly (readonly string[])[], room: number, rest: string): string[] {
  const lines: string[] = [];
  for (const [index, own] of items.entries()) {
    const isLast = index === items.length - 1;
    if (lines.length + own.length > room - (isLast ? 0 : 1)) return [...lines, `- ${items.length - index} ${rest}`];
    lines.push(...own);
  }
  return lines;
}

function headLines(design: RepairDesign, options: ChosenOptions): string[] {
  const { case: repairCase, verdict, ruleSet, libraryVersion } = design;
  const drawing = characterDrawing(design, options);
  return [
    ...wrapText(repairCase.title, WIDTH),
    '='.repeat(WIDTH),
    ...wrapText(`Verdict: ${verdict.toUpperCase()} (${ruleSet}; hoopwright ${libraryVersion})`, WIDTH),
    ...(drawing.length === 0 ? [] : ['', ...drawing]),
  ];
}

/** Why there is no design, and what is missing. */
function stopLines({ reasons, missing }: RepairDesign, options: ChosenOptions): string[][] {
  return [
    ...reasons.map((reason) => item(reasonItem(reason, options))),
    ...missing.map(({ field, why, askWhom }) => item(`missing: ${field}: ${why}; ask ${askWhom}`)),
  ];
}

function answerLines(rows: readonly ShortRow[]): string[] {
  if (rows.length === 0) return [];
  const label = Math.max(...rows.map(([text]) => text.length));
  const value = Math.max(...rows.map(([, text]) => text.length));
  return [
    '',
    'ANSWER',
    ...rows.flatMap(([name, found, by]) => {
      const start = `${name.padEnd(label)}  ${found.padEnd(value)}  `;
      return wrapText(by, WIDTH - start.length).map((line, index) =>
        `${index === 0 ? start : ' '.repeat(start.length)}${line}`.trimEnd(),
      );
    }),
  ];
}

/** What the library supplied, in one paragraph, and how much of the rule set is recalled. */
function assumedLines({ assumed, rules, cautions }: RepairDesign, options: ChosenOptions): string[] {
  const values = assumed.map(({ amount }) =>
    'word' in amount ? `${amount.name}: ${amount.word}` : amountText(amount, options),
  );
  const recalled = rules.filter(({ tag, confirmed }) => tag === 'recalled' && confirmed === undefined).length;
  return [
    '',
    `ASSUMED (${assumed.length})`,
    ...wrapText(values.length === 0 ? 'Nothing: the case gave every value.' : `${values.join('; ')}.`, WIDTH),
    `Rule values written down from memory: ${recalled} of ${rules.length}. Cautions: ${cautions.length}, in the sheet.`,
  ];
}

function fileLines(files: FirstPageOptions['files']): string[] {
  if (files === undefined) return ['', 'The whole sheet: --full. Sheet, drawing and plan as files: --out FOLDER.'];
  return ['', ...wrapText(`Written to ${files.folder}: ${files.names.join(', ')}.`, WIDTH)];
}

import type { AnyFormula, SourceKey, SourceReference } from '../formula/index.js';
import type { RecordedEntry, RecordedStep } from '../formula/recorder.js';
import type { Assumption, RepairDesign, Warning } from '../repair/design/design.js';
import { amountText, answerBlocks } from './answer.js';
import { caseBlocks } from './case.js';
import { bibliographyEntry } from './citation.js';
import { declarationOf } from './declaration-of.js';
import type { Block } from './document.js';
import { endOfLifeBlocks } from './end-of-life.js';
import { evidenceBlocks } from './evidence.js';
import { frontBlocks } from './front.js';
import { lineOnSheet } from './line-text.js';
import { numberedSteps } from './numbered-steps.js';
import { type ChosenOptions, chosen, nothingPrinted, type SheetOptions } from './options.js';
import { render } from './render.js';
import { stepBlocks } from './step.js';
import { warningOnSheet } from './warning.js';

/** How a calculation sheet is written. */
export interface CalculationSheetOptions extends SheetOptions {
  /** The fields of the case as they were typed, by path (`pipe.wallThickness`): the case is then shown in these words. */
  readonly typed?:
    | ReadonlyMap<
        string,
        {
          /** As typed, with its unit. */
          readonly text: string;
        }
      >
    | undefined;
}

function identityBlocks({ case: repairCase, libraryVersion, ruleSet }: RepairDesign): Block[] {
  const { title, reference, date, note } = repairCase;
  const rows = [
    ['Reference', reference],
    ['Survey', date],
    ['Rules', ruleSet],
    ['Library', `hoopwright ${libraryVersion}`],
    ['Note', note],
  ].filter((row): row is [string, string] => row[1] !== undefined);
  return [
    { sort: 'title', text: title },
    { sort: 'paragraph', text: 'Composite repair of a pipe: calculation sheet' },
    { sort: 'rows', rows },
  ];
}

function assumedText({ amount }: Assumption, options: ChosenOptions): string {
  return 'word' in amount ? `${amount.name}: ${amount.word}` : amountText(amount, options);
}

/** What the library supplied, each value with its tag and the reason; a value from a table that the case names is one too. */
function suppliedBlocks({ assumed }: RepairDesign, options: ChosenOptions): Block[] {
  const items = assumed.map((each) => `[${each.tag}] ${assumedText(each, options)}: ${each.because}`);
  return listOr('ASSUMED VALUES', items, 'None: the case gave every value that the design used.');
}

function listOr(title: string, items: readonly string[], otherwise: string): Block[] {
  return [
    { sort: 'heading', level: 1, text: title },
    items.length === 0 ? { sort: 'paragraph', text: otherwise } : { sort: 'list', items },
  ];
}

/** Every recorded entry in order, parts and steps with their numbers. */
function recordBlocks(record: readonly RecordedEntry[], options: ChosenOptions): Block[] {
  let part = 0;
  const numbers = new Map(numberedSteps(record).map(({ number, step }) => [step, number]));
  const printed = nothingPrinted();
  return record.flatMap((entry): Block[] => {
    if (entry.sort === 'heading') {
      part += 1;
      return [{ sort: 'heading', level: 2, text: `${part}  ${entry.title}` }];
    }
    if (entry.sort === 'decision') {
      return [
        { sort: 'heading', level: 3, text: 'Decision' },
        {
          sort: 'rows',
          rows: [
            ['Decided', lineOnSheet(entry.what, options)],
            ['Because', lineOnSheet(entry.because, options)],
          ],
        },
      ];
    }
    return stepBlocks(declarationOf(entry), entry, { ...options, number: numbers.get(entry), printed });
  });
}

/** Every source that the steps and their limits name, in full, in order of first mention. */
function sourceBlocks(formulas: readonly AnyFormula[]): Block[] {
  const references = formulas.flatMap(({ sources, limits }): (SourceReference | undefined)[] => [
    ...sources,
    ...limits.map(({ source }) => source),
  ]);
  const keys = new Set(
    references.flatMap((reference): SourceKey[] => (reference === undefined ? [] : [reference.key])),
  );
  if (keys.size === 0) return [];
  return [
    { sort: 'heading', level: 1, text: 'SOURCES' },
    { sort: 'list', items: [...keys].map(bibliographyEntry) },
  ];
}

/** A whole design as blocks: the answer first, then what it rests on, then every step behind it. */
export function sheetBlocks(design: RepairDesign, options: CalculationSheetOptions = {}): Block[] {
  const all = chosen(options);
  const record = design.record ?? [];
  const isPage = all.format === 'html' || all.format === 'html-fragment';
  const warned = (warning: Warning): string => warningOnSheet(warning, all, options.typed);
  const formulas = record.filter((entry): entry is RecordedStep => entry.sort === 'step').map(declarationOf);
  return [
    ...identityBlocks(design),
    ...(isPage ? frontBlocks(design, all, warned) : []),
    ...answerBlocks(design, all),
    ...(design.verdict === 'designed' ? endOfLifeBlocks(design, all) : []),
    ...suppliedBlocks(design, all),
    // A page has them on its front.
    ...(isPage ? [] : listOr('WARNINGS', design.warnings.map(warned), 'None.')),
    ...listOr('CAUTIONS', design.cautions, 'None.'),
    ...evidenceBlocks(design, formulas, all),
    { sort: 'heading', level: 1, text: 'THE CASE AS GIVEN' },
    ...caseBlocks(design.case, { ...all, typed: options.typed }),
    { sort: 'heading', level: 1, text: 'CALCULATION' },
    ...(design.record === undefined
      ? [
          {
            sort: 'paragraph' as const,
            text: 'The steps were not recorded; ask for them with designRepair(case, { record: true }).',
          },
        ]
      : recordBlocks(record, all)),
    ...sourceBlocks(formulas),
  ];
}

/**
 * The calculation sheet of a design as text of at most 100 columns, as Markdown, as one HTML page (MathML, no script, no
 * network) or as an article for a page of one's own: an engineer's calculation that can be
 * followed on paper, every number with unit, symbol, source and evidence tag. The same design gives the same text.
 *
 * @param design with its record, or the steps are left out
 * @param options how the sheet is written, and what was typed
 * @throws Error when the record holds a function that is not in the registry
 */
export function calculationSheet(design: RepairDesign, options: CalculationSheetOptions = {}): string {
  return render(sheetBlocks(design, options), options);
}

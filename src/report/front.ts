import type { RecordedEntry, RecordedStep } from '../formula/recorder.js';
import type { RepairDesign, Warning } from '../repair/design/design.js';
import { answerInShort, type ShownBy } from './answer-in-short.js';
import type { Block } from './document.js';
import { repairDrawings } from './drawing/index.js';
import { numberedSteps } from './numbered-steps.js';
import type { ChosenOptions } from './options.js';

/** Page one of a sheet as a page: verdict, drawings, the answer with the numbers of its steps, what is recalled, who signs. */
export function frontBlocks(
  design: RepairDesign,
  options: ChosenOptions,
  warning: (warning: Warning) => string,
): Block[] {
  const { verdict, rules, warnings, record } = design;
  const svgs = Object.values(repairDrawings(design, options)).filter((svg) => svg !== undefined);
  const rows = answerInShort(design, options).map(([label, value, by, shown]) => [
    label,
    value,
    by,
    shown === undefined ? '' : stepNumber(record ?? [], shown),
  ]);
  const recalled = rules.filter(({ tag, confirmed }) => tag === 'recalled' && confirmed === undefined);
  return [
    { sort: 'heading', level: 1, text: `VERDICT: ${verdict.toUpperCase()}` },
    ...(svgs.length === 0 ? [] : [{ sort: 'figures' as const, svgs }]),
    ...(rows.length === 0
      ? []
      : [{ sort: 'table' as const, head: ['what', 'how much', 'by, and with', 'step'], rows }]),
    {
      sort: 'paragraph',
      text: `${recalled.length} of ${rules.length} rule values are written down from memory of the named document and not confirmed. ${warnings.length === 0 ? 'No warning.' : 'Warnings:'}`,
    },
    ...(warnings.length === 0 ? [] : [{ sort: 'list' as const, items: warnings.map(warning) }]),
    { sort: 'signatures', who: ['Prepared', 'Checked', 'Approved'] },
  ];
}

/** Numbers of the steps behind a line, as the sheet prints them; nothing where the design has no such step. */
export function stepNumber(record: readonly RecordedEntry[], by: ShownBy): string {
  const steps = numberedSteps(record);
  if ('results' in by) {
    const numbers = by.results.flatMap((value) => steps.find(({ step }) => gives(step, value))?.number ?? []);
    return [...new Set(numbers.map((number) => (by.isPart === true ? partIn(number) : number)))].join(', ');
  }
  const wanted = 'partOf' in by ? by.partOf : by.formula;
  const numbers = steps.flatMap(({ number, step }) => (step.formula === wanted ? [number] : []));
  if ('partOf' in by) return partIn(numbers[0] ?? '');
  return numbers.at(by.isLast === true ? -1 : 0) ?? '';
}

const partIn = (number: string): string => number.split('.')[0] ?? '';

/** Whether a number is what a step gave, alone or beside others. */
function gives({ result }: RecordedStep, value: number): boolean {
  return result === value || (typeof result === 'object' && result !== null && Object.values(result).includes(value));
}

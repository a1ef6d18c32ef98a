import type { RecordedEntry } from '../formula/recorder.js';
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

/** Number of a step as the sheet prints it; nothing where the design has no such step. */
export function stepNumber(record: readonly RecordedEntry[], { formula, isLast }: ShownBy): string {
  const numbers = numberedSteps(record).flatMap(({ number, step }) => (step.formula === formula ? [number] : []));
  return numbers.at(isLast === true ? -1 : 0) ?? '';
}

import { type AnyFormula, type Evidence, type SourceReference, type SourceTag, weakest } from '../formula/index.js';
import { type GivenOutput, givenOutputs } from '../formula/outputs.js';
import type { RecordedStep } from '../formula/recorder.js';
import { arithmetic } from './arithmetic.js';
import { cite } from './citation.js';
import type { Block } from './document.js';
import { parseExpression } from './expression.js';
import { type ListDeclaration, listBlocks } from './list.js';
import { type ChosenOptions, chosen, type StepOptions } from './options.js';
import { type GivenInput, givenInputs, problemOf } from './problem.js';
import { shownValue } from './shown-value.js';
import { substitute } from './substitute.js';
import { type RowTable, type WinningRow, winnerOf } from './winner.js';
import { equationBlocks, inputRow } from './written-equation.js';

/** The tag of a step: the weakest among the form and the coefficients of its formula. */
export function tagOf({ evidence }: AnyFormula): SourceTag {
  return weakest(Object.values(evidence as Readonly<Record<string, Evidence>>).map(({ tag }) => tag));
}

function evidenceText(evidence: Readonly<Record<string, Evidence>>): string {
  return Object.entries(evidence)
    .map(([name, { tag, derived, note }]) => {
      const route = derived === undefined ? '' : `, reproduced by ${derived}`;
      return `${name} ${tag}${route}${note === undefined ? '' : ` (${note})`}`;
    })
    .join('; ');
}

/** What stands behind a formula: evidence for each part of it, and the sources. */
export function backingRows({ evidence, sources }: AnyFormula): string[][] {
  const cited = sources.map((source: SourceReference, index) => [index === 0 ? 'Source' : '', cite(source)]);
  return [['Evidence', evidenceText(evidence)], ...cited];
}

/**
 * A recorded step of a formula as blocks: what it is for, the symbols, the equation three times over, the result, what stands
 * behind it. A formula that the sheet uses again has its names, its method and what stands behind it at its first step.
 */
export function stepBlocks(formula: AnyFormula, step: RecordedStep, options: StepOptions = {}): Block[] {
  const all = { ...options, ...chosen(options) };
  const problem = problemOf(formula, step, all.units);
  const written = problem && arithmetic(problem, all.digits, formula.inhomogeneous !== undefined);
  const winner = problem === undefined ? winnerOf(formula, step, all.units) : undefined;
  const inputs = givenInputs(formula, step.input);
  const [main, ...others] = givenOutputs(formula, step.result);
  const before = options.number === undefined ? undefined : options.printed?.first(formula.id, options.number);
  const blocks: Block[] = [
    {
      sort: 'heading',
      level: 3,
      text: `${options.number === undefined ? '' : `${options.number}  `}${formula.title}`,
      mark: `[${tagOf(formula)}]`,
    },
  ];
  if (step.purpose !== undefined) blocks.push({ sort: 'paragraph', text: sentence(step.purpose) });
  blocks.push({
    sort: 'rows',
    code: true,
    rows: inputs.map((input) => inputRow(input, written, all, before !== undefined)),
  });
  for (const { declaration, value } of inputs)
    if (Array.isArray(value)) blocks.push(...listOnce(declaration, value, all));
  if (main !== undefined && written !== undefined) blocks.push(...equationBlocks(written, inputs, main, all));
  else if (main !== undefined) {
    blocks.push(...wordedBlocks(formula, main, winner?.isMain !== true, before, all));
    if (winner?.isMain === true) blocks.push(...winnerBlocks(winner, inputs, all));
  }
  if (others.length > 0) {
    blocks.push({
      sort: 'rows',
      code: true,
      rows: others.map(({ name, declaration, value }) => [
        declaration.symbol,
        `= ${shownValue(declaration.kind, name, value, all, true, declaration.name)}`,
        declaration.name,
      ]),
    });
  }
  for (const { declaration, value } of others)
    if (Array.isArray(value)) blocks.push(...listOnce(declaration, value, all));
  if (winner?.isMain === false) blocks.push(...winnerBlocks(winner, inputs, all));
  const notes = formula.limits.filter(({ sort, beyond }) => sort === 'note' && beyond?.(step.input) === true);
  blocks.push({
    sort: 'rows',
    rows: [
      ...notes.map(({ text: limit, source }) => [
        'Beyond',
        source === undefined ? limit : `${limit} [${cite(source)}]`,
      ]),
      ...(before === undefined ? backingRows(formula) : [['As in', `step ${before}: names, evidence and source`]]),
      ['Formula', formula.id],
    ],
  });
  return blocks;
}

/** A list that the sheet has printed in an earlier step is named there. */
function listOnce(
  declaration: ListDeclaration,
  rows: readonly unknown[],
  options: ChosenOptions & StepOptions,
): Block[] {
  const { number, printed } = options;
  const what = JSON.stringify([declaration.columns ?? null, rows]);
  const before = number === undefined ? undefined : printed?.first(what, number);
  if (before === undefined || before === number) return listBlocks(declaration, rows, options);
  return [{ sort: 'paragraph', text: `${sentence(declaration.name).slice(0, -1)}: as in step ${before}.` }];
}

/** A result that no single equation gives: the method in words, then the result. */
function wordedBlocks(
  formula: AnyFormula,
  main: GivenOutput,
  withResult: boolean,
  before: string | undefined,
  options: ChosenOptions,
): Block[] {
  const { symbol, kind, name } = main.declaration;
  const isWorded = 'algorithm' in formula.equation && before === undefined;
  const method = isWorded ? formula.equation.algorithm : undefined;
  const result = shownValue(kind, main.name, main.value, options, true, name);
  return [
    ...(method === undefined
      ? []
      : [{ sort: 'paragraph' as const, text: `Method: ${method}.`.replace(/\.\.$/u, '.') }]),
    ...(withResult ? [{ sort: 'equation' as const, left: symbol, lines: [{ text: result, note: name }] }] : []),
  ];
}

/** The row that an algorithm found, by its own equation with its numbers. */
function winnerBlocks(
  { name, problem, output, table }: WinningRow,
  inputs: readonly GivenInput[],
  options: ChosenOptions & StepOptions,
): Block[] {
  return [
    ...(table === undefined ? [] : tableBlocks(table, options)),
    { sort: 'paragraph', text: `For ${name}:` },
    ...equationBlocks(arithmetic(problem, options.digits), inputs, output, options),
  ];
}

/** The rows behind the sums of a winning row, then the sums. */
function tableBlocks({ columns, rows, where, sums }: RowTable, options: ChosenOptions): Block[] {
  return [
    ...where.map(({ symbol, expression }): Block => {
      const text = substitute(parseExpression(expression));
      return { sort: 'equation', left: symbol, lines: [{ text, note: 'each row' }] };
    }),
    ...listBlocks({ name: 'row by row', columns }, rows, options),
    ...sums.map(
      ({ symbol, kind, value, words }): Block => ({
        sort: 'equation',
        left: symbol,
        lines: [{ text: shownValue(kind, symbol, value, options, true), note: words }],
      }),
    ),
  ];
}

function sentence(words: string): string {
  const start = words.charAt(0).toUpperCase() + words.slice(1);
  return /[.!?]$/u.test(start) ? start : `${start}.`;
}

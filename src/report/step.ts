import { type AnyFormula, type Evidence, type SourceReference, type SourceTag, weakest } from '../formula/index.js';
import type { RecordedStep } from '../formula/recorder.js';
import { readQuantity } from '../quantity/index.js';
import { formulaOf } from '../registry/index.js';
import { type Arithmetic, arithmetic, type WrittenCondition } from './arithmetic.js';
import { cite } from './citation.js';
import type { CoherentUnits } from './coherent.js';
import type { Block, EquationLine } from './document.js';
import { parseExpression } from './expression.js';
import { listBlocks } from './list.js';
import { type ChosenOptions, chosen, type StepOptions } from './options.js';
import { type GivenInput, type GivenOutput, givenInputs, givenOutputs, isKind, problemOf } from './problem.js';
import { type Substitute, substitute } from './substitute.js';
import { toTex } from './tex.js';
import { givenText, preferredUnit, quantityText, unitText } from './units.js';

/**
 * The declaration behind a recorded call.
 *
 * @throws Error when the function is not in the registry: a step that cannot be shown must not be left out
 */
export function declarationOf(step: RecordedStep): AnyFormula {
  const formula = formulaOf(step.compute);
  if (formula === undefined)
    throw new Error(
      `the recorded function ${step.compute.name || '(without a name)'} is not a formula of the registry`,
    );
  return formula;
}

/** The tag of a step: the weakest among the form and the coefficients of its formula. */
export function tagOf({ evidence }: AnyFormula): SourceTag {
  return weakest(Object.values(evidence as Readonly<Record<string, Evidence>>).map(({ tag }) => tag));
}

/** A value as it is shown alone: in the unit wanted for it. */
export function shownValue(
  kind: string,
  name: string,
  value: unknown,
  options: ChosenOptions,
  computed: boolean,
): string {
  if (value === undefined) return 'not given';
  if (Array.isArray(value)) return `${value.length} rows`;
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value !== 'number') return String(value);
  if (kind === 'count' || !Number.isFinite(value)) return String(value);
  if (!isKind(kind))
    return computed
      ? quantityText('ratio', value, '1', options.digits)
      : givenText('ratio', value, '1', options.digits);
  const unit = preferredUnit(kind, name, options.units);
  return computed ? quantityText(kind, value, unit, options.digits) : givenText(kind, value, unit, options.digits);
}

function text({ text: number, unit }: Substitute): string {
  return unit === undefined || unit === '' ? number : `${number} ${unit}`;
}

function unitOnly(shown: string): string {
  return shown.replace(/^\S+\s*/u, '');
}

/** A row of the symbol list: the value as typed or wanted, then as it enters the arithmetic when that differs. */
function inputRow(
  { name, declaration, value, byDefault }: GivenInput,
  written: Arithmetic | undefined,
  options: ChosenOptions & StepOptions,
): string[] {
  const shown = options.typed?.[name]?.text ?? shownValue(declaration.kind, name, value, options, false);
  const entering = written?.printed.get(declaration.symbol);
  const entered = entering === undefined || typeof value !== 'number' ? shown : text(entering);
  // In the same unit the number that enters the arithmetic says it all, unless the other is the user's own.
  const alike = options.typed?.[name] === undefined && unitOnly(shown) === unitOnly(entered);
  const chain = entered === shown || alike ? entered : `${shown} = ${entered}`;
  return [declaration.symbol, `= ${chain}`, byDefault ? `${declaration.name} (default)` : declaration.name];
}

/** The numbers as typed: what stands in the first substituted line when that is not what enters the arithmetic. */
function typedSubstitutes(inputs: readonly GivenInput[], typed: StepOptions['typed']): Map<string, Substitute> {
  return new Map(
    inputs.flatMap(({ name, declaration }): [string, Substitute][] => {
      const words = typed?.[name]?.text;
      if (words === undefined || !isKind(declaration.kind)) return [];
      const reading = readQuantity(declaration.kind, words);
      if (!reading.ok) return [];
      const number = /^[\d\s/+.e-]*\d/iu.exec(words.trim())?.[0] ?? String(reading.number);
      return [
        [declaration.symbol, { text: number.includes('/') ? `(${number})` : number, unit: unitText(reading.unit) }],
      ];
    }),
  );
}

function unitNote(set: CoherentUnits, formula: AnyFormula): string | undefined {
  const names = [...new Set(Object.values(set).map(unitText))].filter((name) => name !== '');
  if (formula.inhomogeneous !== undefined) return `tied to the units ${names.join(', ')}`;
  return names.length === 0 ? undefined : `units ${names.join(', ')}`;
}

function conditionItem({ symbols, numbers, holds }: WrittenCondition): string {
  const verdict = holds ? 'holds' : 'does not hold';
  return /\d/u.test(numbers.replaceAll(/"[^"]*"/gu, '')) && numbers !== symbols
    ? `${symbols} ${verdict}: ${numbers}`
    : `${symbols} ${verdict}`;
}

function conversionOf(output: GivenOutput, written: Arithmetic, options: ChosenOptions): string | undefined {
  const wanted = shownValue(output.declaration.kind, output.name, output.value, options, true);
  return wanted === text(written.main.result) ? undefined : wanted;
}

function equationBlocks(
  formula: AnyFormula,
  written: Arithmetic,
  inputs: readonly GivenInput[],
  output: GivenOutput,
  options: ChosenOptions & StepOptions,
): Block[] {
  const typed = typedSubstitutes(inputs, options.typed);
  const converted = inputs.some((input) => (inputRow(input, written, options)[1] ?? '').indexOf('=', 1) > 0);
  const note = converted || formula.inhomogeneous !== undefined ? unitNote(written.units, formula) : undefined;
  const asTyped = (symbols: string): EquationLine[] => {
    const expression = parseExpression(symbols);
    const line = substitute(expression, (symbol) => typed.get(symbol) ?? written.printed.get(symbol));
    const own = substitute(expression, (symbol) => written.printed.get(symbol));
    return typed.size === 0 || line === own ? [] : [{ text: line, note: 'as typed' }];
  };
  const lines = (symbols: string, numbers: string, result: Substitute): EquationLine[] => [
    { text: symbols, tex: toTex(parseExpression(symbols)) },
    ...asTyped(symbols),
    ...(numbers === symbols || numbers === text(result) ? [] : [{ text: numbers, note }]),
    { text: text(result) },
  ];
  const blocks: Block[] = [];
  for (const { symbol, symbols, numbers, result } of written.definitions)
    blocks.push({ sort: 'equation', left: symbol, lines: lines(symbols, numbers, result) });

  if (written.conditions.length > 0) {
    const taken = written.conditions.at(-1)?.holds ? [] : ['so the last form of the equation is taken'];
    blocks.push({ sort: 'list', items: [...written.conditions.map(conditionItem), ...taken] });
  }

  const { main, signChange } = written;
  const conversion = conversionOf(output, written, options);
  const name = output.declaration.name;
  if (written.sort === 'residual' && signChange !== undefined) {
    const [low, high] = signChange;
    const unit = main.result.unit ?? '';
    blocks.push(
      {
        sort: 'equation',
        left: '0',
        lines: [
          { text: main.symbols, tex: toTex(parseExpression(main.symbols)) },
          { text: main.numbers, note },
        ],
      },
      {
        sort: 'paragraph',
        text: `Solved by iteration. The right side is ${low.leftSide} at ${main.symbol} = ${`${low.at} ${unit}`.trimEnd()} and ${high.leftSide} at ${`${high.at} ${unit}`.trimEnd()}.`,
      },
      {
        sort: 'equation',
        left: main.symbol,
        lines: [
          { text: text(main.result), note: conversion === undefined ? name : undefined },
          ...(conversion === undefined ? [] : [{ text: conversion, note: name }]),
        ],
      },
    );
  } else {
    const all = lines(main.symbols, main.numbers, main.result);
    if (conversion !== undefined) all.push({ text: conversion });
    const last = all.pop();
    blocks.push({ sort: 'equation', left: main.symbol, lines: [...all, { text: last?.text ?? '', note: name }] });
  }
  if (!written.closes)
    blocks.push({
      sort: 'paragraph',
      text: 'The result was computed with all digits; the printed numbers are rounded and give it only nearly.',
    });
  return blocks;
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

/** A recorded step as blocks: what it is for, the symbols, the equation three times over, the result, what stands behind it. */
export function stepBlocks(step: RecordedStep, options: StepOptions = {}): Block[] {
  const all = { ...options, ...chosen(options) };
  const formula = declarationOf(step);
  const problem = problemOf(formula, step, all.units);
  const written = problem && arithmetic(problem, all.digits, formula.inhomogeneous !== undefined);
  const inputs = givenInputs(formula, step.input);
  const [main, ...others] = givenOutputs(formula, step.result);
  const blocks: Block[] = [
    {
      sort: 'heading',
      level: 3,
      text: `${options.number === undefined ? '' : `${options.number}  `}${formula.title}`,
      mark: `[${tagOf(formula)}]`,
    },
  ];
  if (step.purpose !== undefined) blocks.push({ sort: 'paragraph', text: sentence(step.purpose) });
  blocks.push({ sort: 'rows', code: true, rows: inputs.map((input) => inputRow(input, written, all)) });
  for (const { declaration, value } of inputs)
    if (Array.isArray(value)) blocks.push(...listBlocks(declaration, value, all));
  if (main !== undefined && written !== undefined) blocks.push(...equationBlocks(formula, written, inputs, main, all));
  else if (main !== undefined) blocks.push(...wordedBlocks(formula, main, all));
  if (others.length > 0) {
    blocks.push({
      sort: 'rows',
      code: true,
      rows: others.map(({ name, declaration, value }) => [
        declaration.symbol,
        `= ${shownValue(declaration.kind, name, value, all, true)}`,
        declaration.name,
      ]),
    });
  }
  for (const { declaration, value } of others)
    if (Array.isArray(value)) blocks.push(...listBlocks(declaration, value, all));
  const notes = formula.limits.filter(({ sort, beyond }) => sort === 'note' && beyond?.(step.input) === true);
  blocks.push({
    sort: 'rows',
    rows: [
      ...notes.map(({ text: limit, source }) => [
        'Beyond',
        source === undefined ? limit : `${limit} [${cite(source)}]`,
      ]),
      ...backingRows(formula),
      ['Formula', formula.id],
    ],
  });
  return blocks;
}

/** A result that no single equation gives: the method in words, then the result. */
function wordedBlocks(formula: AnyFormula, main: GivenOutput, options: ChosenOptions): Block[] {
  const { symbol, kind, name } = main.declaration;
  const method = 'algorithm' in formula.equation ? formula.equation.algorithm : undefined;
  const result = shownValue(kind, main.name, main.value, options, true);
  return [
    ...(method === undefined
      ? []
      : [{ sort: 'paragraph' as const, text: `Method: ${method}.`.replace(/\.\.$/u, '.') }]),
    { sort: 'equation', left: symbol, lines: [{ text: result, note: name }] },
  ];
}

function sentence(words: string): string {
  const start = words.charAt(0).toUpperCase() + words.slice(1);
  return /[.!?]$/u.test(start) ? start : `${start}.`;
}

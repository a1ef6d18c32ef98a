import type { GivenOutput } from '../formula/outputs.js';
import { readQuantity, unitOf } from '../quantity/index.js';
import { isKind } from '../quantity/units/index.js';
import type { Arithmetic, WrittenCondition } from './arithmetic.js';
import type { Block, EquationLine } from './document.js';
import { namesIn, parseExpression } from './expression.js';
import type { ChosenOptions, StepOptions } from './options.js';
import type { GivenInput } from './problem.js';
import { shownValue } from './shown-value.js';
import { type Substitute, substitute } from './substitute.js';
import { unitText } from './units.js';

function text({ text: number, unit }: Substitute): string {
  return unit === undefined || unit === '' ? number : `${number} ${unit}`;
}

function unitOnly(shown: string): string {
  return shown.replace(/^\S+\s*/u, '');
}

/** A row of the symbol list: the value as typed or wanted, then as it enters the arithmetic when that differs; its name unless an earlier step gave it. */
export function inputRow(
  { name, declaration, value, byDefault }: GivenInput,
  written: Arithmetic | undefined,
  options: ChosenOptions & StepOptions,
  isNamed = false,
): string[] {
  const shown =
    options.typed?.[name]?.text ?? shownValue(declaration.kind, name, value, options, false, declaration.name);
  const entering = written?.printed.get(declaration.symbol);
  const entered = entering === undefined || typeof value !== 'number' ? shown : text(entering);
  // In the unit in which it is read the number that enters the arithmetic says it all, unless the other is the user's own.
  const alike = options.typed?.[name] === undefined && unitOnly(shown) === unitOnly(entered);
  const chain = entered === shown || alike ? entered : `${shown} = ${entered}`;
  const words = isNamed ? '' : declaration.name;
  return [declaration.symbol, `= ${chain}`, byDefault ? `${words} (default)`.trim() : words];
}

/** The numbers as typed: what stands in the first substituted line when that is not what enters the arithmetic. */
function typedSubstitutes(inputs: readonly GivenInput[], typed: StepOptions['typed']): Map<string, Substitute> {
  return new Map(
    inputs.flatMap(({ name, declaration }): [string, Substitute][] => {
      const words = typed?.[name]?.text;
      if (words === undefined || !isKind(declaration.kind)) return [];
      const reading = readQuantity(declaration.kind, words);
      // A scale with a zero of its own cannot be multiplied nor subtracted from: 20 degC - 273.15 is no arithmetic.
      if (!reading.ok || unitOf(declaration.kind, reading.unit)?.[2] !== undefined) return [];
      const number = /^[\d\s/+.e-]*\d/iu.exec(words.trim())?.[0] ?? String(reading.number);
      return [
        [declaration.symbol, { text: number.includes('/') ? `(${number})` : number, unit: unitText(reading.unit) }],
      ];
    }),
  );
}

/** The units of a line in which a number was converted: those of its symbols, and of what they give. */
function unitNote(
  names: readonly string[],
  converted: ReadonlySet<string>,
  written: Arithmetic,
  result: Substitute,
): string | undefined {
  if (!names.some((name) => converted.has(name))) return undefined;
  const units = [...names.map((name) => written.printed.get(name)?.unit ?? ''), result.unit ?? ''];
  const shown = [...new Set(units)].filter((unit) => unit !== '');
  return shown.length === 0 ? undefined : `units ${shown.join(', ')}`;
}

function conditionItem({ symbols, numbers, sides, holds }: WrittenCondition): string {
  const verdict = holds ? 'holds' : 'does not hold';
  if (sides !== undefined) return `${symbols} ${verdict}: ${numbers}, that is ${sides}`;
  return /\d/u.test(numbers.replaceAll(/"[^"]*"/gu, '')) && numbers !== symbols
    ? `${symbols} ${verdict}: ${numbers}`
    : `${symbols} ${verdict}`;
}

function conversionOf(output: GivenOutput, written: Arithmetic, options: ChosenOptions): string | undefined {
  const wanted = shownValue(output.declaration.kind, output.name, output.value, options, true, output.declaration.name);
  return wanted === text(written.main.result) ? undefined : wanted;
}

/** The equation of a step three times over: in symbols, in numbers, as a result. */
export function equationBlocks(
  written: Arithmetic,
  inputs: readonly GivenInput[],
  output: GivenOutput,
  options: ChosenOptions & StepOptions,
): Block[] {
  const typed = typedSubstitutes(inputs, options.typed);
  const converted = new Set(
    inputs
      .filter((input) => (inputRow(input, written, options)[1] ?? '').indexOf('=', 1) > 0)
      .map(({ declaration }) => declaration.symbol),
  );
  const asTyped = (symbols: string): EquationLine[] => {
    const expression = parseExpression(symbols);
    const line = substitute(expression, (symbol) => typed.get(symbol) ?? written.printed.get(symbol));
    const own = substitute(expression, (symbol) => written.printed.get(symbol));
    return typed.size === 0 || line === own ? [] : [{ text: line, note: 'as typed' }];
  };
  const lines = (symbols: string, numbers: string, result: Substitute): EquationLine[] => {
    const expression = parseExpression(symbols);
    // A branch that is a bare number is its own result, and one that is a bare symbol shows its number once.
    if (expression.sort === 'number') return [{ text: symbols }];
    const bare = expression.sort === 'name';
    const note = unitNote(namesIn(expression), converted, written, result);
    return [
      { text: symbols },
      ...asTyped(symbols),
      ...(bare || numbers === symbols || numbers === '0' ? [] : [{ text: numbers, note }]),
      { text: text(result) },
    ];
  };
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
          { text: main.symbols },
          {
            text: main.numbers,
            note: unitNote(namesIn(parseExpression(main.symbols)), converted, written, main.result),
          },
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

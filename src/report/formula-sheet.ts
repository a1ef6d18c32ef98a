import type { AnyFormula, Branch, Definition, InputDeclaration, RowSums, Winner } from '../formula/index.js';
import { givenOutputs } from '../formula/outputs.js';
import { type Kind, siSymbol } from '../quantity/index.js';
import { isKind } from '../quantity/units/index.js';
import { cite } from './citation.js';
import { coherentSets, siUnits } from './coherent.js';
import type { Block } from './document.js';
import { parseExpression } from './expression.js';
import { chosen, type SheetOptions } from './options.js';

import { render } from './render.js';
import { shownValue } from './shown-value.js';
import { backingRows, tagOf } from './step.js';
import { substitute } from './substitute.js';
import { preferredUnit, type UnitPreferences, unitText } from './units.js';

/** How the card of a formula is written. Its units are those in which the symbols are shown. */
export type FormulaSheetOptions = SheetOptions;

function even(expression: string): string {
  return substitute(parseExpression(expression));
}

function equation(left: string, expression: string, note?: string): Block {
  return {
    sort: 'equation',
    left,
    lines: [{ text: even(expression), note }],
  };
}

function definitionBlocks(definitions: readonly Definition[] | undefined): Block[] {
  return (definitions ?? []).map(({ symbol, expression }) => equation(symbol, expression));
}

function branchBlocks(symbol: string, { when, where, expression }: Branch): Block[] {
  const note = when === undefined ? 'otherwise' : `if ${even(when)}`;
  return [...definitionBlocks(where), equation(symbol, expression, note)];
}

function winnerBlocks(symbol: string, { name, equation: stated, gives, sums }: Winner): Block[] {
  const own = gives?.symbol ?? symbol;
  const sum = (each: RowSums['sums'][number]): Block => ({
    sort: 'equation',
    left: each.symbol,
    lines: [{ text: `sum of ${each.of}`, note: each.name }],
  });
  return [
    { sort: 'paragraph', text: `For ${name}:` },
    ...definitionBlocks(sums?.where),
    ...(sums?.sums ?? []).map(sum),
    ...definitionBlocks(stated.where),
    ...('branches' in stated
      ? stated.branches.flatMap((branch) => branchBlocks(own, branch))
      : [equation(own, stated.expression)]),
  ];
}

/** The equation as it is stated, in symbols alone. */
export function statedEquation(formula: AnyFormula, symbol: string): Block[] {
  const stated = formula.equation;
  if ('algorithm' in stated) {
    const method: Block = { sort: 'paragraph', text: `${symbol}: ${stated.algorithm}` };
    return stated.winner === undefined ? [method] : [method, ...winnerBlocks(symbol, stated.winner)];
  }
  const shared = definitionBlocks(stated.where);
  if ('branches' in stated) return [...shared, ...stated.branches.flatMap((branch) => branchBlocks(symbol, branch))];
  if ('residual' in stated)
    return [...shared, equation('0', stated.residual, `${symbol} is the value that makes it so`)];
  return [...shared, equation(symbol, stated.expression)];
}

/**
 * The units of a card: such that numbers in them can be put into the equation as they stand. An algorithm has no such
 * equation and takes the units wanted; a formula that is tied to SI takes SI.
 */
function cardUnits(formula: AnyFormula, preferences: UnitPreferences): UnitPreferences {
  const stated = formula.equation;
  if ('algorithm' in stated) return preferences;
  const branches = 'branches' in stated ? stated.branches.flatMap(({ where = [] }) => where) : [];
  const named = [
    ...Object.entries(formula.inputs as Record<string, InputDeclaration>).map(([name, { kind }]) => [name, kind]),
    ...givenOutputs(formula, {}).map(({ name, declaration }) => [name, declaration.kind]),
    ...[...(stated.where ?? []), ...branches].map(({ symbol, kind }) => [symbol, kind]),
  ] as const;
  const wanted = new Map<Kind, string>();
  for (const [name = '', kind = ''] of named)
    if (isKind(kind) && !wanted.has(kind)) wanted.set(kind, preferredUnit(kind, name, preferences));
  const set = formula.inhomogeneous === undefined ? coherentSets(wanted)[0] : siUnits(wanted.keys());
  return { system: preferences.system, kinds: set };
}

/** What stands for the unit of an input: its unit, its words, or what sort of number it is. */
function measure(kind: string, name: string, choices: readonly string[] | undefined, units: UnitPreferences): string {
  if (kind === 'choice') return (choices ?? []).join(', ');
  if (kind === 'flag') return 'yes or no';
  if (!isKind(kind)) return kind;
  return unitText(preferredUnit(kind, name, units)) || siSymbol(kind);
}

function columnsText(columns: InputDeclaration['columns'], units: UnitPreferences): string {
  const parts = Object.entries(columns ?? {}).map(
    ([column, kind]) => `${column} [${measure(kind, column, undefined, units)}]`,
  );
  return parts.length === 0 ? '' : `: ${parts.join(', ')}`;
}

/** The card of a formula as blocks: title, equation, symbols with their units, limits, evidence, sources. */
export function formulaBlocks(formula: AnyFormula, options: FormulaSheetOptions = {}): Block[] {
  const inputs = Object.entries(formula.inputs as Record<string, InputDeclaration>);
  const outputs = givenOutputs(formula, {});
  const asked = chosen(options);
  const all = { ...asked, units: cardUnits(formula, asked.units) };
  const inputRows = inputs.map(([name, { symbol, kind, choices, columns, name: words, default: fallback }]) => {
    const otherwise =
      fallback === undefined ? '' : `; ${shownValue(kind, name, fallback, all, false, words)} unless given`;
    return [symbol, measure(kind, name, choices, all.units), `${words}${columnsText(columns, all.units)}${otherwise}`];
  });
  const outputRows = outputs.map(({ name, declaration: { symbol, kind, name: words, columns } }) => [
    symbol,
    measure(kind, name, undefined, all.units),
    `${words}${columnsText(columns, all.units)} (result)`,
  ]);
  const limits = formula.limits.map(({ sort, text, source }) => [
    sort === 'stop' ? 'Limit' : 'Note',
    source === undefined ? text : `${text} [${cite(source)}]`,
  ]);
  const tied = formula.inhomogeneous === undefined ? [] : [['Tied', formula.inhomogeneous]];
  return [
    { sort: 'heading', level: 3, text: formula.title, mark: `[${tagOf(formula)}]` },
    ...statedEquation(formula, outputs[0]?.declaration.symbol ?? 'result'),
    { sort: 'rows', code: true, rows: [...inputRows, ...outputRows] },
    { sort: 'rows', rows: [...limits, ...tied, ...backingRows(formula), ['Formula', formula.id]] },
  ];
}

/**
 * The card of a formula as text or Markdown.
 *
 * @param formula its declaration
 * @param options how the card is written
 */
export function formulaSheet(formula: AnyFormula, options: FormulaSheetOptions = {}): string {
  return render(formulaBlocks(formula, options), options);
}

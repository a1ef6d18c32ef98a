import type { AnyFormula, OutputDeclaration, RowSums, Winner } from '../formula/index.js';
import { type GivenOutput, givenOutputs } from '../formula/outputs.js';
import type { RecordedStep } from '../formula/recorder.js';
import { equationMet, withDefinitions } from './equation.js';
import { evaluate, type Value } from './evaluate.js';
import { parseExpression } from './expression.js';
import { givenInputs, type Known, knownOf, type Problem, posed, scopeOf } from './problem.js';
import type { UnitPreferences } from './units.js';

/** The winning row of an algorithm, ready to be written out. */
export interface WinningRow {
  readonly name: string;
  readonly problem: Problem;
  /** What its equation gives, and whether that is the first result of the formula. */
  readonly output: GivenOutput;
  readonly isMain: boolean;
  readonly table?: RowTable | undefined;
}

/** The rows behind the sums, and the sums. */
export interface RowTable {
  readonly columns: NonNullable<OutputDeclaration['columns']>;
  readonly rows: readonly Readonly<Record<string, Value>>[];
  /** What each row gives, as text of the declaration. */
  readonly where: RowSums['where'];
  readonly sums: readonly Known[];
}

/** The winning row of a step whose formula is an algorithm and declares one. */
export function winnerOf(
  formula: AnyFormula,
  step: Pick<RecordedStep, 'input' | 'result'>,
  preferences: UnitPreferences,
): WinningRow | undefined {
  const winner = 'algorithm' in formula.equation ? formula.equation.winner : undefined;
  const outputs = givenOutputs(formula, step.result);
  const output = winner && givenBy(winner, outputs);
  if (winner === undefined || output === undefined || typeof output.value !== 'number') return undefined;
  const isMain = winner.gives === undefined;
  const known = knownOf([...givenInputs(formula, step.input), ...outputs.slice(isMain ? 1 : 0)]);
  const { sums } = winner;
  const rows = sums && (step.input[sums.list] as readonly Readonly<Record<string, Value>>[]);
  const table = sums && rows && tableOf(formula, sums, rows, known, step.result);
  const full = [...known, ...(table === undefined || sums === undefined ? [] : fromTable(table, sums))];
  // What the last row gives is written out with its numbers, as a definition of the winner.
  const own = sums?.last === undefined ? [] : sums.where;
  const stated = winner.equation;
  const equation = equationMet(
    { id: formula.id, equation: { ...stated, where: [...own, ...(stated.where ?? [])] } },
    scopeOf(full),
  );
  if (equation === undefined) return undefined;
  const problem = posed(equation, full, { ...output, value: output.value }, preferences);
  return { name: winner.name, problem, output, isMain, table };
}

function givenBy({ gives, name }: Winner, outputs: readonly GivenOutput[]): GivenOutput | undefined {
  if (gives === undefined) return outputs[0];
  const list = outputs.find((each) => each.name === gives.list);
  const row = Array.isArray(list?.value) ? list.value[gives.row - 1] : undefined;
  const kind = list?.declaration.columns?.[gives.column];
  if (row === undefined || kind === undefined) return undefined;
  return {
    name: gives.column,
    declaration: { symbol: gives.symbol, kind: kind as never, name },
    value: row[gives.column],
  };
}

function tableOf(
  formula: AnyFormula,
  { list, columns, last, when, where, sums }: RowSums,
  rows: readonly Readonly<Record<string, Value>>[],
  known: readonly Known[],
  result: unknown,
): RowTable {
  const definitions = where.map(({ symbol, kind, expression }) => ({
    symbol,
    kind,
    expression: parseExpression(expression),
  }));
  const condition = when === undefined ? undefined : parseExpression(when);
  const scope = scopeOf(known);
  const number = last === undefined ? rows.length : (result as Record<string, number>)[last];
  const shown = rows.slice(0, number).map((row) => {
    const own = Object.fromEntries(Object.entries(columns).map(([column, symbol]) => [symbol, row[column] as Value]));
    const counts = condition === undefined || evaluate(condition, { ...scope, ...own }) === true;
    const given = counts ? withDefinitions({ ...scope, ...own }, definitions) : {};
    return { ...own, ...Object.fromEntries(where.map(({ symbol }) => [symbol, given[symbol] ?? 0])) };
  });
  const summed = last === undefined ? shown : shown.slice(0, -1);
  const declared = (formula.inputs as Record<string, { columns?: RowTable['columns'] }>)[list]?.columns ?? {};
  return {
    columns: {
      ...Object.fromEntries(Object.entries(columns).map(([column, symbol]) => [symbol, declared[column] ?? 'number'])),
      ...Object.fromEntries(where.map(({ symbol, kind }) => [symbol, kind])),
    },
    rows: shown,
    where,
    sums: sums.map(({ symbol, kind, of, name }) => ({
      symbol,
      kind,
      value: summed.reduce((sum, row) => sum + Number(row[of]), 0),
      name: symbol,
      words: name,
    })),
  };
}

/** The sums, and the columns of the last row where it stands in the equation. */
function fromTable({ rows, sums, columns }: RowTable, { last, columns: own }: RowSums): Known[] {
  const row = last === undefined ? undefined : rows.at(-1);
  const ofLast = row === undefined ? [] : Object.values(own);
  return [
    ...sums,
    ...ofLast.map((symbol) => ({
      symbol,
      kind: columns[symbol] ?? 'number',
      value: row?.[symbol] as Value,
      name: symbol,
      words: symbol,
    })),
  ];
}

import type { AnyFormula, Definition } from '../../src/formula/index.js';
import { functionOf } from './built.js';
import { column, type Inputs } from './drawn-rows.js';
import type { Work } from './interleaved.js';

/**
 * Loops as a person would write them for one formula: each its own code, with the inputs as a literal, so that the
 * compiler sees for every formula what it would see there. Each returns the sum of its results.
 */

type Columns = Readonly<Record<string, Float64Array>>;

/** Calls of the formula, guards and all. */
export function guardedLoop(formula: AnyFormula, rows: readonly Inputs[]): Work {
  const names = Object.keys(formula.inputs);
  const literal = names.map((name) => `${name}: columns_${name}[row]`).join(', ');
  return loop(names, rows, `sum += compute({ ${literal} })${memberOf(formula)};`, functionOf(formula.id));
}

/** The declared equation as bare arithmetic: no guards, no call. */
export function rawLoop(formula: AnyFormula, rows: readonly Inputs[]): Work {
  const names = Object.keys(formula.inputs);
  const symbols = names.map((name) => `const ${symbolOf(formula, name)} = columns_${name}[row];`);
  return loop(names, rows, [...symbols, arithmetic(formula, (value) => `sum += ${value};`)].join('\n'));
}

/** The declared equation down some columns into an array, what does not change from row to row outside the loop. */
export function rawColumns(formula: AnyFormula, pipe: Inputs, columns: Columns, out: Float64Array): Work {
  const fixed = Object.keys(formula.inputs).filter((name) => !Object.hasOwn(columns, name));
  const code = [
    ...Object.keys(columns).map((name) => `const columns_${name} = columns[${JSON.stringify(name)}];`),
    'return () => {',
    ...fixed.map((name) => `const ${symbolOf(formula, name)} = pipe[${JSON.stringify(name)}];`),
    'for (let row = 0; row < out.length; row++) {',
    ...Object.keys(columns).map((name) => `const ${symbolOf(formula, name)} = columns_${name}[row];`),
    arithmetic(formula, (value) => `out[row] = ${value};`),
    '} return out[out.length - 1]; };',
  ].join('\n');
  return new Function('pipe', 'columns', 'out', code)(pipe, columns, out);
}

/** `.mawp` where the result is a record: its first member is the main one. */
export function memberOf({ output }: AnyFormula): string {
  return typeof output.symbol === 'string' ? '' : `.${Object.keys(output)[0]}`;
}

function loop(names: readonly string[], rows: readonly Inputs[], body: string, compute?: unknown): Work {
  const columns = Object.fromEntries(names.map((name) => [name, column(rows, name)]));
  const code = [
    ...names.map((name) => `const columns_${name} = columns[${JSON.stringify(name)}];`),
    `return () => { let sum = 0; for (let row = 0; row < ${rows.length}; row++) { ${body} } return sum; };`,
  ].join('\n');
  return new Function('columns', 'compute', code)(columns, compute);
}

function symbolOf(formula: AnyFormula, name: string): string {
  return (formula.inputs as Readonly<Record<string, { readonly symbol: string }>>)[name]?.symbol ?? name;
}

/** The equation as statements that end by storing its value. */
function arithmetic({ id, equation }: AnyFormula, store: (value: string) => string): string {
  const defined = (where: readonly Definition[] = []): string =>
    where.map(({ symbol, expression }) => `const ${symbol} = ${inScript(expression)};`).join('\n');
  if ('expression' in equation) return `${defined(equation.where)} ${store(inScript(equation.expression))}`;
  if (!('branches' in equation)) throw new Error(`${id} states no closed equation, so there is no bare arithmetic`);
  const branches = equation.branches.map(
    ({ when, where, expression }) =>
      `${when === undefined ? '' : `if (${inScript(when)})`} { ${defined(where)} ${store(inScript(expression))} }`,
  );
  return `${defined(equation.where)} ${branches.join(' else ')}`;
}

/** Squares and roots as this language writes them. */
function inScript(expression: string): string {
  const text = expression.replace(/(\w+)\^2\b/gu, '($1 * $1)').replace(/\b(sqrt|min|max)\(/gu, 'Math.$1(');
  if (!text.includes('^')) return text;
  throw new Error(`"${expression}" holds a power that the bench cannot write yet`);
}

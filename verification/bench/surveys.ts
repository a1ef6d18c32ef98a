import type { AnyFormula } from '../../src/formula/index.js';
import { budgets } from './budgets.js';
import { built, functions } from './built.js';
import { column, drawPipe, drawRows, type Inputs, ROWS } from './drawn-rows.js';
import { leastInFreshProcesses, type Times } from './fresh-process.js';
import { leastTimes } from './interleaved.js';
import { guardedLoop, memberOf, rawColumns, rawLoop } from './loops.js';
import type { Row } from './row.js';

/** An array form: the formula that it stands for, and what it calls those inputs that it takes as columns. */
interface ArrayForm {
  readonly formula: string;
  readonly columns: Readonly<Record<string, string>>;
}

/** The compiler settles such a loop within this time, but not always the same way. */
const SECONDS = 0.5;
const PROCESSES = 3;

type FillColumns = (input: object, out: Float64Array) => Float64Array;

const losses = { defectDepth: 'depth', defectLength: 'length' };
const walls = { wallThickness: 'wallThickness' };

const arrayForms: Readonly<Record<string, ArrayForm>> = {
  hoopStressAll: { formula: 'pipe/hoop-stress', columns: walls },
  mawpAll: { formula: 'pipe/mawp', columns: walls },
  b31gAll: { formula: 'pipe/b31g-original', columns: losses },
  modifiedB31gAll: { formula: 'pipe/modified-b31g', columns: losses },
  dnvAll: { formula: 'pipe/dnv-single-defect', columns: losses },
};

/** Each formula that has an array form, by call and by row of it, against the bare arithmetic of its declared equation. */
export function surveyRows(say: (what: string) => void): Row[] {
  const exported = [...functions.values()].map(({ name }) => name).filter((name) => name.endsWith('All'));
  return exported.flatMap((name) => {
    say(name);
    const { raw, call, rawColumns, columns } = leastInFreshProcesses('survey', name, PROCESSES);
    return [callRow(formOf(name).formula, raw, call), columnsRow(name, rawColumns, columns)];
  });
}

function callRow(id: string, raw = Number.NaN, call = Number.NaN): Row {
  const note = `raw ${raw.toFixed(2)} ns, ${(call / raw).toFixed(2)} x`;
  return { what: `${id}, a call`, measured: call, unit: 'ns', budget: budgets.call(raw), note };
}

function columnsRow(name: string, raw = Number.NaN, columns = Number.NaN): Row {
  const note = `${columns.toFixed(2)} ns, raw ${raw.toFixed(2)} ns`;
  return { what: `${name}, a row`, measured: columns / raw, unit: 'x', budget: budgets.columns, note };
}

/** Times of one row of an array form and of one call of its formula, each beside the bare arithmetic [ns]. */
export function surveyTimes(name: string): Times {
  const form = formOf(name);
  const formula = built.formulas.formulaById(form.formula);
  if (formula === undefined) throw new Error(`there is no formula ${form.formula}`);
  const [raw, call] = callTimes(formula);
  const [rawColumns, columns] = columnTimes(name, formula, form);
  return { raw, call, rawColumns, columns };
}

function formOf(name: string): ArrayForm {
  const form = arrayForms[name];
  if (form !== undefined) return form;
  throw new Error(`${name} is an array form that the bench does not know: add it to surveys.ts`);
}

function callTimes(formula: AnyFormula): [raw: number, call: number] {
  const rows = drawRows(formula);
  const works = [rawLoop(formula, rows), guardedLoop(formula, rows)] as const;
  agree(formula.id, works[0](), works[1]());
  return leastTimes(works, SECONDS).map((time) => time / ROWS) as [number, number];
}

function columnTimes(name: string, formula: AnyFormula, form: ArrayForm): [raw: number, columns: number] {
  const pipe = drawPipe(formula);
  const fixed = Object.fromEntries(Object.entries(pipe).filter(([input]) => !Object.hasOwn(form.columns, input)));
  const rows = drawRows(formula, fixed);
  const columns = Object.fromEntries(Object.keys(form.columns).map((input) => [input, column(rows, input)]));
  const [rawOut, out] = [new Float64Array(ROWS), new Float64Array(ROWS)];
  const raw = rawColumns(formula, fixed, columns, rawOut);
  const fill = [...functions.values()].find((each) => each.name === name)?.compute as FillColumns;
  const renamed = Object.entries(form.columns).map(([input, own]) => [own, columns[input]]);
  const input = { ...fixed, ...Object.fromEntries(renamed) };
  const times = leastTimes([raw, () => fill(input, out)[ROWS - 1] as number], SECONDS);
  for (const [index, row] of rows.entries()) {
    agree(name, rawOut[index] as number, out[index] as number);
    if (out[index] !== called(formula, row)) throw new Error(`row ${index} of ${name} is not what a call gives`);
  }
  return times.map((time) => time / ROWS) as [number, number];
}

function called(formula: AnyFormula, row: Inputs): unknown {
  const result: unknown = formula.compute(row);
  const member = memberOf(formula).slice(1);
  return member === '' ? result : (result as Inputs)[member];
}

/** What is faster because it calculates something else proves nothing. */
function agree(what: string, raw: number, ours: number): void {
  if (Math.abs(ours - raw) <= 1e-9 * Math.abs(raw)) return;
  throw new Error(`${what}: the bare arithmetic gives ${raw}, the library ${ours}`);
}

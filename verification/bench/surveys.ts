import type { AnyFormula } from '../../src/formula/index.js';
import { budgets } from './budgets.js';
import { built, functions } from './built.js';
import { column, drawPipe, drawRows, type Inputs, ROWS } from './drawn-rows.js';
import { leastTimes } from './interleaved.js';
import { guardedLoop, memberOf, rawColumns, rawLoop } from './loops.js';
import type { Row } from './row.js';

/** An array form: the formula that it stands for, and what it calls those inputs that it takes as columns. */
interface ArrayForm {
  readonly formula: string;
  readonly columns: Readonly<Record<string, string>>;
}

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

/** Each formula that has an array form, by call and by column, against the bare arithmetic of its declared equation. */
export function surveyRows(say: (what: string) => void): Row[] {
  const exported = [...functions.keys()].filter((name) => name.endsWith('All'));
  return exported.flatMap((name) => {
    const form = arrayForms[name];
    if (form === undefined)
      throw new Error(`${name} is an array form that the bench does not know: add it to surveys.ts`);
    say(name);
    const formula = built.formulas.formulaById(form.formula);
    if (formula === undefined) throw new Error(`there is no formula ${form.formula}`);
    return [callRow(formula), columnsRow(name, formula, form)];
  });
}

function callRow(formula: AnyFormula): Row {
  const rows = drawRows(formula.id);
  const works = [rawLoop(formula, rows), guardedLoop(formula, rows)] as const;
  agree(formula.id, works[0](), works[1]());
  const [raw, guarded] = leastTimes(works).map((time) => time / ROWS) as [number, number];
  return {
    what: `${formula.id}, a call`,
    measured: guarded,
    unit: 'ns',
    budget: budgets.call(raw),
    note: `raw ${raw.toFixed(2)} ns, ${(guarded / raw).toFixed(2)} x`,
  };
}

function columnsRow(name: string, formula: AnyFormula, form: ArrayForm): Row {
  const pipe = drawPipe(formula.id);
  const fixed = Object.fromEntries(Object.entries(pipe).filter(([input]) => !Object.hasOwn(form.columns, input)));
  const rows = drawRows(formula.id, fixed);
  const columns = Object.fromEntries(Object.keys(form.columns).map((input) => [input, column(rows, input)]));
  const [rawOut, out] = [new Float64Array(ROWS), new Float64Array(ROWS)];
  const raw = rawColumns(formula, fixed, columns, rawOut);
  const fill = functions.get(name)?.compute as FillColumns;
  const renamed = Object.entries(form.columns).map(([input, own]) => [own, columns[input]]);
  const input = { ...fixed, ...Object.fromEntries(renamed) };
  const [rawTime, time] = leastTimes([raw, () => fill(input, out)[ROWS - 1] as number]) as [number, number];
  for (const [index, row] of rows.entries()) {
    agree(name, rawOut[index] as number, out[index] as number);
    if (out[index] !== called(formula, row)) throw new Error(`row ${index} of ${name} is not what a call gives`);
  }
  return {
    what: `${name}, a row`,
    measured: time / rawTime,
    unit: 'x',
    budget: budgets.columns,
    note: `${(time / ROWS).toFixed(2)} ns, raw ${(rawTime / ROWS).toFixed(2)} ns`,
  };
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

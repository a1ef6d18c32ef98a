import { describe, expect, it } from 'vitest';
import {
  type AnyFormula,
  attempt,
  type InputDeclaration,
  type InputKind,
  isCalculationError,
} from '../../src/formula/index.js';
import { formulas, overColumns } from '../../src/formulas.js';
import { seeded } from '../../verification/oracles/random.js';

const ROWS = 40;
const closed = formulas.filter(
  ({ equation, inputs }) =>
    ('expression' in equation || 'branches' in equation) &&
    Object.values(inputs as AnyFormula['inputs']).every(({ kind }) => kind !== 'list'),
);

/** Rows from the samples of a formula; every ninth holds a number that can never be right. */
function drawn({ id, inputs }: AnyFormula): Record<string, unknown> {
  const random = seeded(id);
  const columns: Record<string, unknown> = {};
  for (const [name, declared] of Object.entries(inputs as Readonly<Record<string, InputDeclaration>>)) {
    const { sample = [0.1, 1], choices } = declared;
    const kind = declared.kind as InputKind;
    if (kind === 'choice') columns[name] = choices?.[0];
    else if (kind === 'flag') columns[name] = true;
    else {
      const value = (row: number) => (row % 9 === 8 ? Number.NaN : sample[0] + random() * (sample[1] - sample[0]));
      const whole = kind === 'count' ? Math.ceil : Number;
      columns[name] = Float64Array.from({ length: ROWS }, (_, row) => whole(value(row)));
    }
  }
  return columns;
}

function rowOf(columns: Record<string, unknown>, row: number): Record<string, unknown> {
  const cells = Object.entries(columns);
  return Object.fromEntries(cells.map(([name, list]) => [name, list instanceof Float64Array ? list[row] : list]));
}

describe('a formula over columns', () => {
  it('gives for every closed formula what each row gives alone, bit for bit, refusals among them', () => {
    const seen = { computed: 0, refused: 0, formulas: 0 };
    for (const formula of closed) {
      const columns = drawn(formula);
      if (!Object.values(columns).some((each) => each instanceof Float64Array)) continue;
      const over = overColumns(formula.id, columns);
      seen.formulas++;
      for (let row = 0; row < ROWS; row++) {
        const alone = attempt(() => formula.compute(rowOf(columns, row)));
        if (!alone.ok) {
          const code = isCalculationError(alone.refusal) ? alone.refusal.code : 'none';
          expect([over.status[row], over.because.get(row)]).toEqual([code, alone.refusal.message]);
          for (const list of Object.values(over.results)) expect(list[row]).toBeNaN();
          seen.refused++;
          continue;
        }
        expect(over.status[row]).toBe('computed');
        expect(over.because.has(row)).toBe(false);
        const value: unknown = alone.value;
        const found = typeof value === 'object' && value !== null ? value : { result: value };
        for (const [name, list] of Object.entries({ ...over.results, ...over.words }))
          expect(list[row]).toBe(Reflect.get(found, name) ?? (list instanceof Float64Array ? Number.NaN : undefined));
        seen.computed++;
      }
    }
    expect(seen.formulas).toBeGreaterThan(150);
    expect(seen.computed).toBeGreaterThan(10 * seen.formulas);
    expect(seen.refused).toBeGreaterThan(seen.formulas);
  });

  it('takes what is alike for all rows once', () => {
    const { status, results, because } = overColumns('pipe/hoop-stress', {
      pressure: Float64Array.of(1e6, -1e6, 2e6),
      outsideDiameter: 0.2,
      wallThickness: 0.01,
    });
    expect(status).toEqual(['computed', 'invalid-input', 'computed']);
    // p D / (2 t) = 1 * 200 / 20 = 10 MPa
    expect([...(results['result'] ?? [])].map((each) => each / 1e6)).toEqual([10, Number.NaN, 20]);
    expect(because.get(1)).toMatch(/^pressure is -1000000 Pa/u);
  });

  it.each([
    ['a name that is none', 'pipe/hoop-stres', {}, /did you mean pipe\/hoop-stress/u],
    ['a column that is none', 'pipe/hoop-stress', { presure: Float64Array.of(1) }, /presure .*which takes pressure/u],
    ['an input of all objects', 'pipe/hoop-stress', { constructor: Float64Array.of(1) }, /constructor .*is no input/u],
    ['what is missing', 'pipe/hoop-stress', { pressure: Float64Array.of(1) }, /outsideDiameter is missing/u],
    [
      'no column at all',
      'pipe/hoop-stress',
      { pressure: 1e6, outsideDiameter: 0.2, wallThickness: 0.01 },
      /at least one Float64Array/u,
    ],
    [
      'columns of two lengths',
      'pipe/hoop-stress',
      { pressure: Float64Array.of(1, 2), outsideDiameter: Float64Array.of(1), wallThickness: 0.01 },
      /outsideDiameter is 1; must have as many rows as pressure, 2/u,
    ],
    [
      'a column of words',
      'cure/cure-wait',
      { mechanism: Float64Array.of(1) },
      /mechanism is a Float64Array; must be one choice for all rows/u,
    ],
  ])('refuses %s', (_, id, columns, message) => {
    expect(() => overColumns(id, columns)).toThrow(message);
  });
});

import { describe, expect, it } from 'vitest';
import { type AnyFormula, isCalculationError } from '../../src/formula/index.js';
import { formulas } from '../../src/registry/index.js';
import { drawList } from '../../tests/formula/samplers.js';
import { drawInput } from '../oracles/draw.js';
import { seeded } from '../oracles/random.js';
import { cureLimits } from './cure.js';
import { laminateLimits } from './laminate.js';
import type { Inputs, LimitRow, Numbers } from './limit.js';
import { pipeLimits } from './pipe.js';
import { siteLimits } from './site.js';
import { workLimits } from './work.js';

/** Every limit of validity from both sides: just inside it is accepted, just outside refused by its code and its name. */

const rows = [...pipeLimits, ...laminateLimits, ...cureLimits, ...siteLimits, ...workLimits].flatMap((row) =>
  row.of.split(' ').map((id) => [id, row.says ?? `${row.input} ${row.accepts} the limit`, row] as const),
);

/** Declared limits that no number decides: a word, or whether something is given. */
const ofWords: readonly RegExp[] = [
  /^A moisture-cured system is never shifted/u,
  /^The maker's activation energy is missing/u,
  /^Nothing shows that the nearest structural discontinuity/u,
  /^The degree of cure wanted is out of reach/u,
];

const formulaOf = (id: string): AnyFormula => {
  const found = formulas.find((formula) => formula.id === id);
  if (found === undefined) throw new Error(`there is no formula ${id}`);
  return found;
};

const DRAWS = 12;

/** What a call says of a limit: passed, silent, or stopped by another. */
function verdictOf(formula: AnyFormula, row: LimitRow, input: Inputs): 'beyond' | 'within' | 'another' {
  if (row.code === 'note') {
    const limit = formula.limits.find(({ text }) => text.startsWith(row.says ?? ''));
    if (limit?.beyond === undefined) throw new Error(`${formula.id} declares no predicate: ${row.says}`);
    try {
      return limit.beyond(input as never) ? 'beyond' : 'within';
    } catch (error) {
      if (isCalculationError(error)) return 'another';
      throw error;
    }
  }
  try {
    formula.compute(input as never);
    return 'within';
  } catch (error) {
    if (!isCalculationError(error)) throw error;
    const name = row.names ?? row.input;
    const named = error.parameter === name || error.constraint.includes(name);
    return error.code === row.code && named ? 'beyond' : 'another';
  }
}

describe('the limits of validity', () => {
  it.each(rows)('of %s: %s', (id, _, row) => {
    const formula = formulaOf(id);
    const random = seeded(`${id} ${row.input} ${row.accepts}`);
    const met = { inside: 0, outside: 0 };
    for (let draw = 0; draw < DRAWS; draw++) {
      const { input } = drawInput(formula, random, drawList);
      const where = typeof row.where === 'function' ? row.where(input as Numbers) : row.where;
      const own = Object.entries({ ...input, ...where }).filter(([, value]) => value !== undefined);
      const around = Object.fromEntries(own) as Numbers;
      const limit = typeof row.limit === 'function' ? row.limit(around) : row.limit;
      const step = row.step ?? 1e-6 * Math.abs(limit);
      const at = (value: number): Inputs => ({ ...around, ...(row.put?.(value, around) ?? { [row.input]: value }) });
      const [inner, outer] = row.accepts === 'up to' ? [limit - step, limit + step] : [limit + step, limit - step];
      const [inside, outside] = [verdictOf(formula, row, at(inner)), verdictOf(formula, row, at(outer))];
      expect(inside, `inside, at ${inner}: ${JSON.stringify(around)}`).not.toBe('beyond');
      expect(outside, `outside, at ${outer}: ${JSON.stringify(around)}`).not.toBe('within');
      if (inside === 'within') met.inside += 1;
      if (outside === 'beyond') met.outside += 1;
    }
    if (row.stoppedInside !== true) expect(met.inside, 'never accepted inside').toBeGreaterThan(0);
    expect(met.outside, 'never refused outside').toBeGreaterThan(0);
  });

  it('that are declared are all probed, but for those that no number decides', () => {
    const missing = formulas.flatMap(({ id, limits }) =>
      limits
        .filter(({ text }) => !ofWords.some((words) => words.test(text)))
        .filter(
          ({ text }) => !rows.some(([of, , { says }]) => of === id && says !== undefined && text.startsWith(says)),
        )
        .map(({ text }) => `${id}: ${text}`),
    );
    expect(missing).toEqual([]);
  });

  it('of words stop or note as declared', () => {
    const moist = formulas.filter(({ limits }) => limits.some(({ text }) => /^A moisture-cured/u.test(text)));
    expect(moist.length).toBeGreaterThan(10);
    for (const formula of moist) {
      const { input } = drawInput(formula, seeded(`${formula.id} moist`), drawList);
      expect(() => formula.compute({ ...input, mechanism: 'moisture' } as never), formula.id).toThrow(/moisture/u);
    }
    for (const { id, limits } of formulas)
      for (const { text, beyond } of limits) {
        const left = /^The maker's activation energy/u.test(text) ? 'activationEnergy' : 'distanceToDiscontinuity';
        if (/^(?:The maker's activation energy|No distance to)/u.test(text)) {
          expect(beyond?.({ [left]: 50_000 } as never), id).toBe(false);
          expect(beyond?.({} as never), id).toBe(true);
        }
      }
  });
});

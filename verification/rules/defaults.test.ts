import { isDeepStrictEqual } from 'node:util';
import { describe, expect, it } from 'vitest';
import { type AnyFormula, isCalculationError } from '../../src/formula/index.js';
import { formulas } from '../../src/registry/index.js';
import { drawList } from '../../tests/formula/samplers.js';
import { drawInput } from '../oracles/draw.js';
import { seeded } from '../oracles/random.js';
import { atDefaults } from './at-defaults.js';
import { inSi } from './coefficient.js';
import { defaultsList } from './defaults.js';

/** The defaults of the formulas against the list that a person keeps: as declared, and as the functions take them. */

const rows = defaultsList.flatMap(([input, value, ids]) =>
  ids.split(' ').map((id): readonly [string, string, unknown] => [id, input, inSi(value)]),
);
const formulaOf = (id: string): AnyFormula => {
  const found = formulas.find((formula) => formula.id === id);
  if (found === undefined) throw new Error(`there is no formula ${id}`);
  return found;
};

/** The result and what the predicates of the limits say, or the refusal. */
function outcome({ compute, limits }: AnyFormula, input: object): unknown {
  try {
    return [compute(input as never), limits.map(({ beyond }) => beyond?.(input as never))];
  } catch (error) {
    if (!isCalculationError(error)) throw error;
    return `${error.code} ${error.parameter}`;
  }
}

/** The wall and its strength are given together or not at all, and what is left out is the pair. */
const together = ['laminate/pressure-long-term', 'laminate/thickness-long-term'];
const pair = ['remainingWall', 'yieldStrength'];

/** What the default might have been instead; beside 0, a hundredth of what is usual. */
function others(value: unknown, sample: readonly number[] | undefined): unknown[] {
  if (typeof value !== 'number') return [];
  return value === 0 ? [0.01 * (sample?.[1] ?? 1)] : [value * 1.001, value * 0.999];
}

describe('the defaults of the formulas', () => {
  it('are those of the list, and no others', () => {
    const declared = formulas.flatMap(({ id, inputs }) =>
      Object.entries<{ default?: unknown }>(inputs).flatMap(([input, own]) =>
        own.default === undefined ? [] : [`${id} ${input} ${own.default}`],
      ),
    );
    expect(declared.toSorted()).toEqual(rows.map(([id, input, value]) => `${id} ${input} ${value}`).toSorted());
  });

  it.each(rows)('%s takes %s as listed where it is left out', (id, input, value) => {
    const formula = formulaOf(id);
    const random = seeded(`${id} ${input} left out`);
    const declared = (
      formula.inputs as Readonly<Record<string, { sample?: readonly number[]; choices?: readonly string[] }>>
    )[input];
    const instead = [...others(value, declared?.sample), ...(declared?.choices ?? []).filter((word) => word !== value)];
    const own = together.includes(id) ? pair : [input];
    let tells = false;
    for (let draw = 0; draw < 200 && !(tells && draw >= 5); draw++) {
      const drawn = { ...drawInput(formula, random, drawList).input, ...atDefaults[`${id} ${input}`] };
      const rest = Object.fromEntries(Object.entries(drawn).filter(([name]) => !own.includes(name)));
      const left = outcome(formula, rest);
      const filled = Object.fromEntries(own.map((name) => [name, value]));
      expect(left).toEqual(outcome(formula, { ...rest, ...filled }));
      tells ||= instead.some((other) => {
        const changed = Object.fromEntries(own.map((name) => [name, other]));
        return !isDeepStrictEqual(left, outcome(formula, { ...rest, ...changed }));
      });
    }
    expect(tells, 'no call tells it from another').toBe(true);
  });
});

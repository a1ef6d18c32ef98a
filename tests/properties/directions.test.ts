import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type AnyFormula, type InputDeclaration, isCalculationError } from '../../src/formula/index.js';
import { formulas } from '../../src/registry/index.js';
import { drawInput } from '../../verification/oracles/draw.js';
import { seeded } from '../../verification/oracles/random.js';
import { drawList } from '../formula/samplers.js';
import { directions } from './directions.js';

/** Every formula, drawn within its stated spans, goes the way that is written for each of its inputs. */

const runs = { seed: 20261125, numRuns: 120 };

type Direction = '+' | '-' | '~';

const directionsOf = (id: string): ReadonlyMap<string, Direction> =>
  new Map((directions[id] ?? '').split(' ').map((entry) => [entry.slice(0, -1), entry.slice(-1) as Direction]));

const numericInputs = ({ inputs }: AnyFormula): [string, InputDeclaration][] =>
  Object.entries<InputDeclaration>(inputs).filter(([, { sample }]) => sample !== undefined);

/** The main result as a number; a yes is 1, a no 0, and a length that is unlimited is longer than any. */
function mainResult({ output }: AnyFormula, result: unknown): number | undefined {
  const main =
    typeof output.symbol === 'string' ? result : (result as Record<string, unknown>)[Object.keys(output)[0] ?? ''];
  if (main === 'unlimited') return Number.POSITIVE_INFINITY;
  return typeof main === 'number' || typeof main === 'boolean' ? Number(main) : undefined;
}

function attempt(formula: AnyFormula, input: object): number | undefined {
  try {
    return mainResult(formula, formula.compute(input));
  } catch (error) {
    if (isCalculationError(error)) return undefined;
    throw error;
  }
}

const ROUNDING = 1e-12;
const rises = (from: number, to: number): boolean =>
  to > from && !(to - from <= ROUNDING * Math.max(Math.abs(from), Math.abs(to)));

describe('the list of directions', () => {
  it('names every formula and every input that has a span, and nothing else', () => {
    const inList = Object.keys(directions).flatMap((id) => [...directionsOf(id).keys()].map((name) => `${id} ${name}`));
    const inRegistry = formulas.flatMap((formula) => {
      const names = numericInputs(formula).map(([name]) => name);
      return (names.length === 0 ? [''] : names).map((name) => `${formula.id} ${name}`);
    });
    const hint =
      'tests/properties/directions.ts needs a line for each formula: + never falls, - never rises, ~ no one direction';
    expect(
      inRegistry.filter((entry) => !inList.includes(entry)),
      hint,
    ).toEqual([]);
    expect(
      inList.filter((entry) => !inRegistry.includes(entry)),
      hint,
    ).toEqual([]);
  });
});

describe('within its stated spans', () => {
  const isDirected = ({ id }: AnyFormula): boolean =>
    [...directionsOf(id).values()].some((way) => way === '+' || way === '-');
  const directed = formulas.filter(isDirected);
  it.each(directed.map((formula) => [formula.id, formula] as const))(
    '%s goes the way that is written for each input',
    (id, formula) => {
      const moved = new Map<string, number>();
      const declared = new Map(numericInputs(formula));
      const ways = [...directionsOf(id)].filter(([, direction]) => direction !== '~');
      fc.assert(
        fc.property(fc.nat(), (draw) => {
          const random = seeded(`${id} ${draw}`);
          const { input } = drawInput(formula, random, drawList);
          const before = attempt(formula, input);
          fc.pre(before !== undefined);
          for (const [name, direction] of ways) {
            const { sample, kind, default: fallback } = declared.get(name) as InputDeclaration;
            const from = input[name] ?? fallback;
            if (sample === undefined || typeof from !== 'number') continue;
            const grown = from + (sample[1] - from) * random();
            const to = (kind as string) === 'count' ? Math.ceil(grown) : grown;
            if (!(to > from)) continue;
            const after = attempt(formula, { ...input, [name]: to });
            if (after === undefined) continue;
            const [low, high] = direction === '+' ? [before, after] : [after, before];
            // Tens of thousands of comparisons: the sentence, and the expectation, only where one fails.
            if (rises(high as number, low as number))
              expect.fail(`${name} from ${from} to ${to} takes ${before} to ${after}; ${JSON.stringify(input)}`);
            if (rises(low as number, high as number)) moved.set(name, (moved.get(name) ?? 0) + 1);
          }
        }),
        runs,
      );
      const still = ways.filter(([name]) => !moved.has(name));
      expect(still, 'an input that moves nothing has no direction').toEqual([]);
    },
  );
});

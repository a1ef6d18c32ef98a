import { describe, expect, it } from 'vitest';
import { type AnyFormula, type InputDeclaration, isCalculationError } from '../../src/formula/index.js';
import { formulas } from '../../src/registry/index.js';
import { drawInput } from '../../verification/oracles/draw.js';
import { type Random, seeded } from '../../verification/oracles/random.js';
import { drawList } from './samplers.js';

/** Sizes that no pipe has but that every guard lets pass, in some of the inputs: what comes out must still be a number. */

const CALLS = 150;

/** A size from 1e-300 to 1e300, in half of the calls from 1e-150 to 1e150, so that products stay inside float64 too. */
function extreme(random: Random): number {
  const reach = random() < 0.5 ? 300 : 150;
  return 10 ** ((2 * random() - 1) * reach);
}

function stretched(declared: InputDeclaration, good: unknown, random: Random): unknown {
  if (Array.isArray(good)) return good.map((row) => stretchedRow(row, random));
  if (typeof good !== 'number') return good;
  if ((declared.kind as string) === 'count') return Math.floor(Math.min(extreme(random), Number.MAX_SAFE_INTEGER));
  const size = extreme(random);
  return (declared.sample?.[0] ?? 0) < 0 && random() < 0.5 ? -size : size;
}

function stretchedRow(row: unknown, random: Random): unknown {
  if (typeof row !== 'object' || row === null) return random() < 0.5 ? row : extreme(random);
  return Object.fromEntries(
    Object.entries(row).map(([key, value]) => [
      key,
      typeof value === 'number' && random() < 0.3 ? extreme(random) : value,
    ]),
  );
}

function holdsNoNumber(value: unknown): boolean {
  if (typeof value === 'number') return !Number.isFinite(value);
  return typeof value === 'object' && value !== null && Object.values(value).some(holdsNoNumber);
}

/** The first call whose answer holds NaN or an infinity, or that fails with anything but a refusal. */
function firstBreak(formula: AnyFormula): unknown {
  for (let call = 0; call < CALLS; call++) {
    const random = seeded(`extremes ${formula.id} ${call}`);
    const { input: drawn } = drawInput(formula, random, drawList);
    const share = random() < 0.3 ? 1 : 0.4;
    const input: Record<string, unknown> = { ...drawn };
    for (const [name, declared] of Object.entries<InputDeclaration>(formula.inputs)) {
      if (name in input && random() < share) input[name] = stretched(declared, input[name], random);
    }
    try {
      const result: unknown = formula.compute(input);
      if (holdsNoNumber(result)) return { input, result };
    } catch (error) {
      if (!isCalculationError(error)) return { input, error };
    }
  }
  return undefined;
}

describe('sizes from 1e-300 to 1e300', () => {
  it.each(formulas.map((formula) => [formula.id, formula] as const))(
    '%s answers by a number or refuses',
    (_, formula) => {
      expect(firstBreak(formula)).toBeUndefined();
    },
  );
});

describe('the smallest shape of a glass-transition curve', () => {
  it.each(['cure/di-benedetto', 'cure/logarithmic-transition'])('%s ends at the fully cured transition', (id) => {
    const formula = formulas.find((each) => each.id === id);
    const input = { uncuredTransition: 250, fullTransition: 400, lambda: 1e-20, conversion: 1 };
    expect(formula?.compute(input)).toBeCloseTo(400, 9);
  });
});

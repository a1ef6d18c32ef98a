import { describe, expect, it } from 'vitest';
import { type AnyFormula, formula, isCalculationError } from '../../src/formula/index.js';
import type { Length, Strain, Stress } from '../../src/quantity/index.js';
import { formulas } from '../../src/registry/index.js';
import { type Draw, drawCalls } from '../../verification/oracles/draw.js';
import { seeded } from '../../verification/oracles/random.js';
import { drawList } from './samplers.js';
import { factorOf, scaledInput, scaledResult } from './scaling.js';

/** Every formula in another system of units. This closes the hole that `+` and `<` compile across kinds. */

function call(formula: AnyFormula, input: object): unknown {
  try {
    return formula.compute(input);
  } catch (error) {
    if (isCalculationError(error)) return `refused: ${error.message}`;
    throw error;
  }
}

const NOT_FINITE = 'not a finite number';
const notFinite = (_: string, value: unknown): unknown =>
  typeof value === 'number' && !Number.isFinite(value) ? NOT_FINITE : value;

/** What changes, besides the units, when the units change. */
function inhomogeneity(formula: AnyFormula, draw: Draw): string | undefined {
  if (JSON.stringify({ result: draw.result }, notFinite).includes(NOT_FINITE)) {
    return `${formula.id} returns what is ${NOT_FINITE} for ${JSON.stringify(draw.input)}`;
  }
  const input = scaledInput(formula, draw.input);
  const [expected, found] = [scaledResult(formula, draw.result), call(formula, input)];
  if (JSON.stringify(expected) === JSON.stringify(found)) return undefined;
  return [
    `${formula.id} changes with the system of units`,
    `  input         ${JSON.stringify(draw.input)}`,
    `  result        ${JSON.stringify(draw.result)}`,
    `  scaled input  ${JSON.stringify(input)}`,
    `  expected      ${JSON.stringify(expected)}`,
    `  found         ${JSON.stringify(found)}`,
    '  A dimensional constant must be an input with a default; roots are Math.sqrt and Math.cbrt, never a fractional power.',
  ].join('\n');
}

function problem(formula: AnyFormula): string | undefined {
  const draws = drawCalls(formula, seeded(`${formula.id} scaled`), { wanted: 20, lists: drawList });
  return draws.map((draw) => inhomogeneity(formula, draw)).find((text) => text !== undefined);
}

describe('a formula in another system of units', () => {
  it.for(formulas.map((formula) => [formula.id, formula] as const))(
    '%s gives the scaled result, bit for bit',
    ([, formula], context) => {
      if (formula.inhomogeneous !== undefined) context.skip(`tied to a unit: ${formula.inhomogeneous}`);
      const text = problem(formula);
      if (text !== undefined) expect.fail(text);
    },
  );

  it('changes when its declaration says that it is tied to a unit', () => {
    const tied = formulas.filter(({ inhomogeneous }) => inhomogeneous !== undefined);
    for (const formula of tied) expect(problem(formula), `${formula.id} needs no inhomogeneous mark`).toBeDefined();
  });
});

describe('the homogeneity test', () => {
  interface Bar {
    readonly stress: Stress;
    readonly length: Length;
  }
  const bar = (compute: (input: Bar) => number): AnyFormula =>
    formula<Bar, Strain>({
      id: 'test/bar',
      title: 'A bar that no source knows',
      compute: compute as (input: Bar) => Strain,
      equation: { expression: '0' },
      inputs: {
        stress: { symbol: 'sigma', kind: 'stress', name: 'stress', sample: [1e6, 1e8] },
        length: { symbol: 'L', kind: 'length', name: 'length', sample: [0.1, 10] },
      },
      output: { symbol: 'e', kind: 'strain', name: 'strain' },
      sources: [],
      evidence: { form: { tag: 'chosen' } },
      limits: [],
    });

  it('scales base units by different whole powers of 4096', () => {
    expect(factorOf('length')).toBe(4096);
    expect(factorOf('stress')).toBe(4096 ** 4);
    expect(factorOf('leak severity')).toBe(4096 ** 4.5);
    expect(factorOf('angle')).toBe(1);
    expect(factorOf('number')).toBe(1);
  });

  it('passes what depends on ratios alone', () => {
    expect(problem(bar(({ length }) => Math.sqrt(length / (3 * length))))).toBeUndefined();
  });

  it('catches a hidden length, a comparison across kinds, a fractional power and NaN', () => {
    expect(problem(bar(({ length }) => length / 0.05))).toContain('changes with the system of units');
    expect(problem(bar(({ length, stress }) => (length * 1e7 < stress ? 1 : 2)))).toBeDefined();
    expect(problem(bar(({ length }) => (length * length * length) ** (1 / 3) / length))).toBeDefined();
    expect(problem(bar(() => Number.NaN))).toContain('not a finite number');
  });
});

import { describe, expect, it } from 'vitest';
import { formulas } from '../../src/registry/index.js';
import { equationProblem, equationText } from '../../verification/oracles/agreement.js';
import { drawCalls } from '../../verification/oracles/draw.js';
import { unitProblems } from '../../verification/oracles/equation.js';
import { seeded } from '../../verification/oracles/random.js';

/**
 * Every declared equation, evaluated by mathjs, against the function that it declares. This proves that the text on the
 * sheet is what the code computes; it is no evidence that either is true.
 */

describe.each(formulas.map((formula) => [formula.id, formula] as const))('%s', (id, formula) => {
  const hasList = Object.values<{ kind: string }>(formula.inputs).some(({ kind }) => kind === 'list');

  if ('algorithm' in formula.equation) {
    it('says in words how its result is found', () => {
      expect((formula.equation as { algorithm: string }).algorithm.length).toBeGreaterThan(20);
    });
    return;
  }

  it('takes no list, which only an algorithm may', () => {
    expect(hasList, `${id} has a list among its inputs, so its equation must be { algorithm }`).toBe(false);
  });
  if (hasList) return;

  it('computes what its equation says, at 64 digits', () => {
    const problem = equationProblem(formula);
    if (problem !== undefined) expect.fail(problem);
  });

  it('has the unit of its kind in every branch and definition', (context) => {
    if (formula.inhomogeneous !== undefined) context.skip(`tied to a unit: ${formula.inhomogeneous}`);
    const [draw] = drawCalls(formula, seeded(id), { wanted: 1 });
    if (draw === undefined) throw new Error('one draw was asked for');
    expect(unitProblems(formula, draw.bySymbol, draw.result), equationText(formula)).toEqual([]);
  });
});

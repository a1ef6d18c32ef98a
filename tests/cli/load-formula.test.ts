import { describe, expect, test } from 'vitest';
import { loadFormula } from '../../src/cli/load-formula.js';
import { formulas } from '../../src/registry/index.js';

describe('a formula that the command loads', () => {
  test.each(formulas.map((formula) => [formula.id, formula] as const))(
    '%s is the one of the registry, from its own room',
    async (id, formula) => {
      expect((await loadFormula(id)).inputs).toBe(formula.inputs);
    },
  );

  test('refuses an input that it does not declare, as the registry does', async () => {
    const { compute } = await loadFormula('pipe/hoop-stress');
    expect(() => compute({ pressure: 1e6, outsideDiameter: 0.2, wall: 0.01 })).toThrow(
      /is no input of pipe\/hoop-stress/,
    );
  });

  test.each(['pipe/hop-stress', 'hoop-stress', 'pip/hoop-stress'])('hints at the one that %s meant', async (id) => {
    await expect(loadFormula(id)).rejects.toThrow('did you mean pipe/hoop-stress?');
  });

  test.each(['pipe', 'pipe/', '/hoop-stress', 'toString/hoop-stress', 'pipe/hoop-stress/more', 'cure/hoop-stress'])(
    'is none of the name %s',
    async (id) => {
      await expect(loadFormula(id)).rejects.toThrow(`There is no formula ${JSON.stringify(id)}`);
    },
  );
});

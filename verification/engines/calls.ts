import type { AnyFormula } from '../../src/formula/index.js';
import { formulaById, formulas } from '../../src/registry/index.js';
import { isClosedForm } from '../oracles/accuracy.js';
import { drawCalls } from '../oracles/draw.js';
import { seeded } from '../oracles/random.js';
import { readCases, runCases } from '../runner/run.js';

/** A call of a formula as plain data, so that every engine is given the same bits. */
export interface EngineCall {
  readonly formula: string;
  readonly input: unknown;
}

/** Draws of each closed form beside its cases. */
const DRAWS = 40;

/** What the cases call, each formula that they reach by another one too, and drawn calls of every closed form. */
export function engineCalls(): EngineCall[] {
  const calls: EngineCall[] = [];
  const overheard = (id: string): AnyFormula | undefined => {
    const formula = formulaById(id);
    return formula === undefined
      ? undefined
      : ({
          ...formula,
          compute: (input: never) => {
            calls.push({ formula: id, input });
            return formula.compute(input);
          },
        } as AnyFormula);
  };
  runCases(readCases(), overheard);
  const drawn = formulas
    .filter(isClosedForm)
    .flatMap((formula) =>
      drawCalls(formula, seeded(`${formula.id} engines`), { wanted: DRAWS, least: 10, most: 10 * DRAWS }).map(
        ({ input }): EngineCall => ({ formula: formula.id, input }),
      ),
    );
  const different = new Map([...calls, ...drawn].map((call) => [JSON.stringify(call), call]));
  return [...different.values()];
}

import { isCalculationError } from '../../src/formula/index.js';
import { formulaById } from '../../src/registry/index.js';
import type { EngineCall } from './calls.js';

/** Runs in each engine, bundled: every number that a call gives, in order; a refusal is its code. */

export type Answer = readonly (number | string | boolean | null)[];

function leaves(value: unknown): Answer {
  if (typeof value === 'object' && value !== null) return Object.values(value).flatMap(leaves);
  if (typeof value === 'number' || typeof value === 'string' || typeof value === 'boolean') return [value];
  return [null];
}

function answersOf(calls: readonly EngineCall[]): Answer[] {
  return calls.map(({ formula, input }) => {
    try {
      return leaves(formulaById(formula)?.compute(input as never));
    } catch (error) {
      return [isCalculationError(error) ? error.code : String(error)];
    }
  });
}

// Bundled, this file is the whole script of an engine; what runs there calls it by this name.
Object.assign(globalThis, { answersOf });

import { ulp } from '../oracles/ulp.js';
import type { Answer } from './answers.js';
import type { EngineCall } from './calls.js';

/** How the answers of one engine differ from those of another. */
export interface Difference {
  /** Numbers compared. */
  readonly numbers: number;
  /** Numbers that are not the same double. */
  readonly different: number;
  /** Answers of another shape, word or refusal: none may be. */
  readonly otherwise: readonly string[];
  /** The largest difference of each formula that has one, in units in the last place, the largest first. */
  readonly byFormula: Readonly<Record<string, number>>;
}

export function difference(calls: readonly EngineCall[], one: readonly Answer[], other: readonly Answer[]): Difference {
  let [numbers, different] = [0, 0];
  const otherwise = new Set<string>();
  const largest = new Map<string, number>();
  for (const [place, { formula }] of calls.entries()) {
    const [here = [], there = []] = [one[place], other[place]];
    if (here.length !== there.length) otherwise.add(formula);
    for (const [index, value] of here.entries()) {
      const also = there[index];
      if (typeof value !== 'number' || typeof also !== 'number') {
        if (value !== also) otherwise.add(formula);
        continue;
      }
      numbers += 1;
      if (value === also) continue;
      different += 1;
      largest.set(formula, Math.max(largest.get(formula) ?? 0, Math.round(Math.abs(value - also) / ulp(value))));
    }
  }
  const sorted = [...largest].sort(([a, most], [b, more]) => more - most || (a < b ? -1 : 1));
  return { numbers, different, otherwise: [...otherwise], byFormula: Object.fromEntries(sorted) };
}

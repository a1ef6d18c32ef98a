import { readFileSync } from 'node:fs';
import { formulaById } from '../../src/registry/index.js';
import { allConstants } from '../perturbation/bundle.js';
import { constantAt, readSummary } from '../perturbation/summary.js';
import type { DerivationsOf } from './lines.js';
import type { PerturbationReport } from './shape.js';

/** What `npm run perturb` found, from the summary that is committed. */

/**
 * The derivations in code of each formula: test files that notice a change of its result and call its function themselves. One
 * that only reaches it through another formula re-derives that other one.
 */
export function derivationsOf(): DerivationsOf {
  const { derivations } = readSummary();
  const texts = new Map<string, string>();
  const textOf = (file: string): string => {
    const text = texts.get(file) ?? readFileSync(new URL(`../../${file}`, import.meta.url), 'utf8');
    texts.set(file, text);
    return text;
  };
  return (id) => {
    const name = formulaById(id)?.compute.name ?? '';
    const calls = new RegExp(`\\b${name}\\b`, 'u');
    return (derivations[id] ?? []).filter((file) => name !== '' && calls.test(textOf(file)));
  };
}

export function perturbationReport(): PerturbationReport {
  const { change, count, catchers, bySort, unnoticed, since } = readSummary();
  const constants = allConstants();
  return {
    change,
    constants: count,
    since,
    catchers,
    bySort: Object.entries(bySort).map(([sort, counts]) => ({ sort, counts })),
    survivors: unnoticed.map((each) => {
      const { file, code } = constantAt(each, constants) ?? { file: each.of, code: 'no longer in the code' };
      return { file, constant: each.constant, code, smallest: each.smallest };
    }),
  };
}

import { existsSync, readFileSync } from 'node:fs';
import { formulaById } from '../../src/registry/index.js';
import { caughtBy, countsBySort, type PerturbationList } from '../perturbation/list.js';
import type { DerivationsOf } from './lines.js';
import type { PerturbationSummary } from './shape.js';

/** What `npm run perturb` found, as it was committed. */

const path = new URL('../perturbation/survivors.json', import.meta.url);

export function readPerturbations(): PerturbationList | undefined {
  return existsSync(path) ? JSON.parse(readFileSync(path, 'utf8')) : undefined;
}

/**
 * The derivations in code of each formula: test files that notice a change of its result and call its function themselves. One
 * that only reaches it through another formula re-derives that other one.
 */
export function derivationsOf(): DerivationsOf {
  const list = readPerturbations();
  const texts = new Map<string, string>();
  const textOf = (file: string): string => {
    const text = texts.get(file) ?? readFileSync(new URL(`../../${file}`, import.meta.url), 'utf8');
    texts.set(file, text);
    return text;
  };
  return (id) => {
    const name = formulaById(id)?.compute.name ?? '';
    const calls = new RegExp(`\\b${name}\\b`, 'u');
    return (list?.results[id]?.derivations ?? []).filter((file) => name !== '' && calls.test(textOf(file)));
  };
}

export function perturbationSummary(): PerturbationSummary | null {
  const list = readPerturbations();
  if (list === undefined) return null;
  const { change, constants } = list;
  return {
    change,
    constants: constants.length,
    catchers: [...caughtBy],
    bySort: countsBySort(list).map(([sort, ...counts]) => ({ sort, counts })),
    survivors: constants
      .filter((each) => each.caughtBy === 'nothing' && each.sort !== 'limit')
      .map(({ file, constant, code, smallest }) => ({ file, constant, code, smallest })),
  };
}

import { existsSync, readFileSync } from 'node:fs';
import { caughtBy, countsBySort, type PerturbationList } from '../perturbation/list.js';
import type { DerivationsOf } from './lines.js';
import type { PerturbationSummary } from './shape.js';

/** What `npm run perturb` found, as it was committed. */

const path = new URL('../perturbation/survivors.json', import.meta.url);

export function readPerturbations(): PerturbationList | undefined {
  return existsSync(path) ? JSON.parse(readFileSync(path, 'utf8')) : undefined;
}

export function derivationsOf(): DerivationsOf {
  const list = readPerturbations();
  return (formula) => list?.results[formula]?.derivations ?? [];
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

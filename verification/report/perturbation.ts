import { existsSync, readFileSync } from 'node:fs';
import type { DerivationsOf } from './lines.js';
import type { PerturbationSummary } from './shape.js';

/** What `npm run perturb` found, as it was committed. */

export interface PerturbedConstant {
  readonly file: string;
  readonly line: number;
  readonly constant: string;
  readonly code: string;
  readonly sort: string;
  readonly caughtBy: string;
  readonly catchers: readonly string[];
  readonly smallest: string;
}

export interface PerturbationList {
  readonly change: number;
  readonly constants: readonly PerturbedConstant[];
  /** For every formula the derivations in code that notice a change of its result. */
  readonly results: Readonly<Record<string, { readonly caughtBy: string; readonly derivations: readonly string[] }>>;
}

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
  const byCatcher: Record<string, number> = {};
  for (const { caughtBy } of list.constants) byCatcher[caughtBy] = (byCatcher[caughtBy] ?? 0) + 1;
  return {
    change: list.change,
    constants: list.constants.length,
    byCatcher,
    survivors: list.constants
      .filter(({ caughtBy }) => caughtBy === 'nothing')
      .map(({ file, line, constant, code }) => ({ where: `${file}:${line}`, constant, code })),
  };
}

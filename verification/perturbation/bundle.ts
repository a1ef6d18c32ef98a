import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { AnyFormula } from '../../src/formula/index.js';
import { bundleTests, type WithTests } from '../in-process/bundle-tests.js';
import { filesIn, root } from '../in-process/files.js';
import type { CaseResult } from '../runner/judge.js';
import type { CaseFileReading } from '../runner/run.js';
import { type Constant, constantsOf, isPerturbed, returnsOf } from './constants.js';

/**
 * The library, the case runner and the tests in one script in which every constant can be changed: each literal stands as a
 * call that gives its value, and each result of a formula passes through one that can shift it.
 */

export interface Loaded extends WithTests {
  readonly formulas: readonly AnyFormula[];
  readonly readCases: () => CaseFileReading[];
  readonly runCases: (readings: readonly CaseFileReading[]) => CaseResult[];
}

export interface Hooks {
  readonly constant: (index: number) => number;
  readonly result: (id: string, value: unknown) => unknown;
}

export interface Bundle {
  readonly constants: readonly Constant[];
  /** Formulas whose results can be shifted. */
  readonly results: readonly string[];
  /** The formulas of the source files that import a file, directly or through others, and its own. */
  readonly formulasOver: (file: string) => ReadonlySet<string>;
  /** The test files that import a file of a folder themselves. */
  readonly testsOf: (folder: string) => ReadonlySet<string>;
  /** Evaluates everything anew, with these hooks. */
  readonly load: (hooks: Hooks) => Loaded;
}

let found: readonly Constant[] | undefined;

/** Constants of all perturbed files, in the order of the files. */
export function allConstants(): readonly Constant[] {
  found ??= filesIn('src', '.ts')
    .filter(isPerturbed)
    .flatMap((file) => constantsOf(file, readFileSync(join(root, file), 'utf8')));
  return found;
}

/** The text of a source file with its constants and results as calls. */
function instrumented(file: string, text: string, first: ReadonlyMap<string, number>): string {
  const edits: { readonly at: number; readonly end: number; readonly by: string }[] = [];
  if (isPerturbed(file)) {
    constantsOf(file, text).forEach(({ places }, index) => {
      for (const [at, end] of places) edits.push({ at, end, by: `__constant(${(first.get(file) ?? 0) + index})` });
    });
  }
  for (const { id, places } of returnsOf(file, text)) {
    for (const [at, end] of places) {
      edits.push({ at, end: at, by: `__result(${JSON.stringify(id)}, ` });
      edits.push({ at: end, end, by: ')' });
    }
  }
  let changed = text;
  // From the end, so that places stay right; at one place the closing bracket of a result comes before nothing else.
  for (const { at, end, by } of edits.sort((a, b) => b.at - a.at || b.end - a.end))
    changed = changed.slice(0, at) + by + changed.slice(end);
  return changed;
}

/** Builds the bundle over some test files. */
export async function bundle(tests: readonly string[]): Promise<Bundle> {
  const constants = allConstants();
  const first = new Map<string, number>();
  constants.forEach(({ file }, index) => {
    if (!first.has(file)) first.set(file, index);
  });
  const declared = new Map<string, readonly string[]>();
  const edited = (file: string, text: string): string => {
    const own = returnsOf(file, text).filter(({ places }) => places.length > 0);
    declared.set(
      file,
      own.map(({ id }) => id),
    );
    return instrumented(file, text, first);
  };
  const { imports, load } = await bundleTests<
    Omit<Loaded, 'testsIn'>,
    { __constant: Hooks['constant']; __result: Hooks['result'] }
  >(
    tests,
    edited,
    ['__constant', '__result'],
    [
      `export { formulas } from './src/registry/index.ts';`,
      `export { readCases, runCases } from './verification/runner/run.ts';`,
    ],
  );
  const importers = new Map<string, Set<string>>();
  for (const [file, imported] of imports)
    for (const path of imported) importers.set(path, (importers.get(path) ?? new Set()).add(file));
  const formulasOver = (file: string): ReadonlySet<string> => {
    const seen = new Set([file]);
    for (const each of seen)
      for (const importer of importers.get(each) ?? []) {
        // The registry and the tests list everything; what they import says nothing.
        if (/^src\/(?!registry\/|repair\/|json\/|report\/|cli\/)\w+\//u.test(importer)) seen.add(importer);
      }
    return new Set([...seen].flatMap((each) => declared.get(each) ?? []));
  };
  const testsOf = (folder: string): ReadonlySet<string> => {
    const own = [...importers].filter(([file]) => file.startsWith(`${folder}/`));
    return new Set(own.flatMap(([, by]) => [...by].filter((importer) => importer.endsWith('.test.ts'))));
  };
  return {
    constants,
    results: [...declared.values()].flat(),
    formulasOver,
    testsOf,
    load: ({ constant, result }) => load({ __constant: constant, __result: result }),
  };
}

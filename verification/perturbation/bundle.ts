import { readdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join, relative } from 'node:path';
import { pathToFileURL } from 'node:url';
import { Script } from 'node:vm';
import { build, type Plugin } from 'esbuild';
import type { AnyFormula } from '../../src/formula/index.js';
import type { CaseResult } from '../runner/judge.js';
import type { CaseFileReading } from '../runner/run.js';
import { type Constant, constantsOf, isPerturbed, returnsOf } from './constants.js';
import type { ShimTest } from './vitest-shim.js';

/**
 * The library, the case runner and the tests in one script in which every constant can be changed: each literal stands as a
 * call that gives its value, and each result of a formula passes through one that can shift it.
 */

export interface Loaded {
  readonly formulas: readonly AnyFormula[];
  readonly readCases: () => CaseFileReading[];
  readonly runCases: (readings: readonly CaseFileReading[]) => CaseResult[];
  /** Loads a test file on first use. */
  readonly testsIn: (file: string) => readonly ShimTest[];
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

const root = join(import.meta.dirname, '../..');

/** Files of a folder and below, by their ending. */
export function filesIn(folder: string, ending: string): string[] {
  return readdirSync(join(root, folder), { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith(ending))
    .map((entry) => relative(root, join(entry.parentPath, entry.name)))
    .sort();
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

/** Runs of a property here: fewer than in the tests, since each is run for hundreds of changes. */
const RUNS = 50;
let full = false;

/** Runs an act with as many runs of each property as its test asks for. */
export function inFull<T>(act: () => T): T {
  full = true;
  try {
    return act();
  } finally {
    full = false;
  }
}

/** fast-check whose failing properties are not shrunk, since that they fail is all that is asked. */
function briefly(fc: Record<string, unknown>): unknown {
  const assert = fc['assert'] as (property: unknown, options?: { numRuns?: number }) => void;
  const brief = (property: unknown, options: { numRuns?: number } = {}): void =>
    assert(property, {
      ...options,
      ...(full ? {} : { numRuns: Math.min(RUNS, options.numRuns ?? RUNS) }),
      endOnFailure: true,
    } as never);
  return { ...fc, assert: brief, default: { ...(fc['default'] as object | undefined), ...fc, assert: brief } };
}

/** Builds the bundle over some test files. */
export async function bundle(tests: readonly string[]): Promise<Bundle> {
  const constants = allConstants();
  const first = new Map<string, number>();
  constants.forEach(({ file }, index) => {
    if (!first.has(file)) first.set(file, index);
  });
  const declared = new Map<string, readonly string[]>();
  const shim = join(root, 'verification/perturbation/vitest-shim.ts');
  const hooks: Plugin = {
    name: 'hooks',
    setup(setup) {
      setup.onResolve({ filter: /^vitest$/ }, () => ({ path: shim }));
      setup.onLoad({ filter: /\.ts$/ }, ({ path }) => {
        const file = relative(root, path);
        const text = readFileSync(path, 'utf8');
        const contents = file.startsWith('src/') ? instrumented(file, text, first) : text;
        if (file.startsWith('src/')) {
          const own = returnsOf(file, text).filter(({ places }) => places.length > 0);
          declared.set(
            file,
            own.map(({ id }) => id),
          );
        }
        return {
          contents: contents.replaceAll('import.meta.url', JSON.stringify(pathToFileURL(path).href)),
          loader: 'ts',
        };
      });
    },
  };
  const entry = [
    `import { inFile } from 'vitest';`,
    `export { formulas } from './src/registry/index.ts';`,
    `export { readCases, runCases } from './verification/runner/run.ts';`,
    'const files = {',
    ...tests.map((file) => `${JSON.stringify(file)}: () => require(${JSON.stringify(`./${file}`)}),`),
    '};',
    'export const testsIn = (file) => inFile(file, files[file]);',
  ].join('\n');
  const { outputFiles, metafile } = await build({
    stdin: { contents: entry, resolveDir: root, loader: 'ts' },
    bundle: true,
    write: false,
    metafile: true,
    absWorkingDir: root,
    format: 'cjs',
    platform: 'node',
    target: 'node20',
    packages: 'external',
    logLevel: 'error',
    plugins: [hooks],
  });
  const importers = new Map<string, Set<string>>();
  for (const [file, { imports }] of Object.entries(metafile.inputs))
    for (const { path } of imports) importers.set(path, (importers.get(path) ?? new Set()).add(file));
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
  const code = outputFiles[0]?.text ?? '';
  const script = new Script(`(function (require, module, exports, __constant, __result) {${code}\n})`, {
    filename: 'perturbed.cjs',
  });
  const run = script.runInThisContext();
  const own = createRequire(import.meta.url);
  const require = (name: string): unknown => (name === 'fast-check' ? briefly(own(name)) : own(name));
  return {
    constants,
    results: [...declared.values()].flat(),
    formulasOver,
    testsOf,
    load: ({ constant, result }) => {
      const module = { exports: {} };
      run(require, module, module.exports, constant, result);
      return module.exports as Loaded;
    },
  };
}

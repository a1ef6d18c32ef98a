import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join, relative } from 'node:path';
import { pathToFileURL } from 'node:url';
import { Script } from 'node:vm';
import { build, type Plugin } from 'esbuild';
import { briefly } from './briefly.js';
import { root } from './files.js';
import type { ShimTest } from './vitest-shim.js';

/** The library and tests of its own in one script, whose sources may be changed on the way in, to be run many times over. */

export interface TestBundle<Exports, Globals extends object> {
  /** The files that each file of the bundle imports. */
  readonly imports: ReadonlyMap<string, readonly string[]>;
  /** Evaluates everything anew, with these names known to it. */
  readonly load: (globals: Globals) => Exports & WithTests;
}

export interface WithTests {
  /** Loads a test file on first use. */
  readonly testsIn: (file: string) => readonly ShimTest[];
}

/**
 * @param tests   test files, by their path from the root
 * @param edited  the text of a source file as it goes into the script
 * @param globals names that the edited text uses
 * @param exports lines that export more than the tests
 */
export async function bundleTests<Exports = object, Globals extends object = object>(
  tests: readonly string[],
  edited: (file: string, text: string) => string,
  globals: readonly (keyof Globals & string)[],
  exports: readonly string[] = [],
): Promise<TestBundle<Exports, Globals>> {
  const shim = join(root, 'verification/in-process/vitest-shim.ts');
  const sources: Plugin = {
    name: 'sources',
    setup(setup) {
      setup.onResolve({ filter: /^vitest$/ }, () => ({ path: shim }));
      setup.onLoad({ filter: /\.ts$/ }, ({ path }) => {
        const file = relative(root, path);
        const text = readFileSync(path, 'utf8');
        const contents = file.startsWith('src/') ? edited(file, text) : text;
        return {
          contents: contents.replaceAll('import.meta.url', JSON.stringify(pathToFileURL(path).href)),
          loader: 'ts',
        };
      });
    },
  };
  const entry = [
    `import { inFile } from 'vitest';`,
    ...exports,
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
    plugins: [sources],
  });
  const imports = new Map(
    Object.entries(metafile.inputs).map(([file, input]) => [file, input.imports.map(({ path }) => path)] as const),
  );
  const code = outputFiles[0]?.text ?? '';
  const script = new Script(`(function (require, module, exports, ${globals.join(', ')}) {${code}\n})`, {
    filename: 'in-process.cjs',
  });
  const run = script.runInThisContext();
  const own = createRequire(import.meta.url);
  const require = (name: string): unknown => (name === 'fast-check' ? briefly(own(name)) : own(name));
  return {
    imports,
    load: (values) => {
      const module = { exports: {} };
      run(require, module, module.exports, ...globals.map((name) => values[name]));
      return module.exports as Exports & WithTests;
    },
  };
}

/**
 * Writes the files of the package that Node loads, a few in place of hundreds: the entries for `import` and `require`, and the
 * command, which stands on the files for `require`, since they start sooner.
 *
 * `dist/modules` holds one file for each source file, from which a bundler takes what a page uses; Node reads each file
 * that it is shown, and reading them was four fifths of the time of an import. All entries share their chunks, so that a
 * program that imports several holds each function once.
 */
import { chmodSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { isBuiltin } from 'node:module';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type OutputChunk, type Plugin, type RollupBuild, type RollupOutput, rollup } from 'rollup';
import { entries } from './contents.js';
import { declarationsApart } from './declarations-apart.js';

const dist = fileURLToPath(new URL('../dist/', import.meta.url));
const modules = join(dist, 'modules/');

/** The rooms with formulas. */
const rooms = 'mechanics|pipe|laminate|wrap|resin|cure|site|seal|acceptance';

/** A chunk and the files that it takes, of which those that the core has no use for may lie apart; `$1` is their room. */
type Chunks = readonly (readonly [chunk: string, files: RegExp, apart?: string])[];

const job = /^repair\/(?!case\/)/u;

const common: Chunks = [
  ['quantities', /^(?:numeric|quantity|formula(?!\/sources))\/|^repair\/version/u],
  ['case', /^repair\/case\/(?!words)/u],
];

/** An import waits for each file. The index of a room is left over only as the list that the registry collects. */
const imported: Chunks = [
  [
    'declarations',
    new RegExp(`\\?declaration$|/declared-inputs\\.js$|^registry/|^formula/sources|^(?:${rooms})/index\\.js$`, 'u'),
  ],
  ['formulas', new RegExp(`^(?:rules|${rooms})/`, 'u'), 'formulas-more'],
  ...common,
  ['job', job],
];

/** A file costs `require` little, and the command that evaluates a formula asks for its room alone. */
const required: Chunks = [
  ['$1-declarations', new RegExp(`^(${rooms})/(?:.*\\?declaration|.*declared-inputs\\.js|index\\.js)$`, 'u')],
  ['$1', new RegExp(`^(rules|${rooms})/`, 'u'), '$1-more'],
  ...common,
  ['job', job, 'job-more'],
];

/** The chunk of a file, the first that fits; what fits none goes where rollup puts it. */
function chunkOf(id: string, chunks: Chunks, core: ReadonlySet<string>): string | undefined {
  const file = id.replace(modules, '');
  const [chunk, files, apart = chunk] = chunks.find(([, each]) => each.test(file)) ?? [];
  return (core.has(id) ? chunk : apart)?.replace('$1', files?.exec(file)?.[1] ?? '');
}

/** The command carries its packages inside, so that it starts fast. */
const packages: Plugin = {
  name: 'packages',
  resolveId: (id) => {
    if (/^[./]/u.test(id)) return null;
    return isBuiltin(id) ? { id, external: true } : fileURLToPath(import.meta.resolve(id));
  },
};

function read(files: Iterable<string>): Promise<RollupBuild> {
  return rollup({
    input: Object.fromEntries([...files].map((file) => [file, join(modules, `${file}.js`)])),
    plugins: [packages, declarationsApart()],
    treeshake: { moduleSideEffects: false },
    onLog: (_, { message, ids = [] }) => {
      // A circle within a package is its own affair.
      if (ids.length === 0 || !ids.every((id) => id.includes('node_modules'))) throw new Error(message);
    },
  });
}

/** The files of which a program keeps something that imports this one alone, before it asks for more. */
async function keptBy(file: string): Promise<ReadonlySet<string>> {
  const bundle = await read([file]);
  const { output } = await bundle.generate({ format: 'es', hoistTransitiveImports: false });
  await bundle.close();
  const loaded: OutputChunk[] = [output[0]];
  for (const { imports } of loaded)
    for (const each of output)
      if (each.type === 'chunk' && imports.includes(each.fileName) && !loaded.includes(each)) loaded.push(each);
  const files = loaded.flatMap(({ modules: inside }) => Object.entries(inside));
  return new Set(files.flatMap(([id, { renderedLength }]) => (renderedLength > 0 ? [id] : [])));
}

/** Writes the files of one format. What the core has no use for lies apart, so that it loads no more than that. */
async function write(
  format: 'es' | 'cjs',
  files: Iterable<string>,
  chunks: Chunks,
  core: string,
): Promise<RollupOutput> {
  const inCore = await keptBy(core);
  const extension = format === 'es' ? 'js' : 'cjs';
  const bundle = await read(files);
  const output = await bundle.write({
    dir: dist,
    format,
    entryFileNames: `[name].${extension}`,
    chunkFileNames: `shared/[name].${extension}`,
    manualChunks: (id) => chunkOf(id, chunks, inCore),
    onlyExplicitManualChunks: true,
  });
  await bundle.close();
  return output;
}

/** The licence of each package inside, which asks to travel with it. */
function writeLicences({ output }: RollupOutput): void {
  const inside = output.flatMap((chunk) => (chunk.type === 'chunk' ? chunk.moduleIds : []));
  const folders = new Set(inside.flatMap((id) => /^.*\/node_modules\/(?:@[^/]+\/)?[^/]+/u.exec(id)?.[0] ?? []));
  const texts = [...folders].map((folder) => {
    const { name, version } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
    const licence = readFileSync(join(folder, 'LICENSE'), 'utf8').trim();
    return `${name} ${version}, bundled into the command\n\n${licence}\n`;
  });
  writeFileSync(join(dist, 'LICENSES.txt'), texts.join(`\n${'-'.repeat(80)}\n\n`));
}

const files = [...entries().values()];
await write('es', files, imported, 'index');
writeLicences(await write('cjs', [...files, 'cli'], required, 'cli/design-case'));
// The command is no entry: no bundler asks for its parts.
for (const part of ['cli', 'cli.js']) rmSync(join(modules, part), { recursive: true });
chmodSync(join(dist, 'cli.cjs'), 0o755);

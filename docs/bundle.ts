/**
 * Writes the entries of the package as Node loads them, for `import` and `require`: a few files in place of hundreds.
 *
 * `dist/modules` holds one file for each source file, from which a bundler takes what a page uses; Node reads each file
 * that it is shown, and reading them was four fifths of the time of an import. All entries share their chunks, so that a
 * program that imports several holds each function once.
 */
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { rollup } from 'rollup';
import { entries } from './contents.js';
import { declarationsApart } from './declarations-apart.js';

const dist = fileURLToPath(new URL('../dist/', import.meta.url));
const modules = join(dist, 'modules/');

/** The rooms with formulas. */
const formulaRooms = ['mechanics', 'pipe', 'laminate', 'wrap', 'resin', 'cure', 'site', 'seal', 'acceptance'];
const inRoom = `^(?:${formulaRooms.join('|')})/`;

/** The chunk of each file, the first that fits; what fits none goes where rollup puts it. */
const chunks: readonly (readonly [chunk: string, files: RegExp])[] = [
  // The index of a room is left over only as the list that the registry collects.
  ['declarations', new RegExp(`\\?declaration$|/declared-inputs\\.js$|^registry/|${inRoom}index\\.js$`, 'u')],
  ['quantities', /^(?:numeric|quantity|formula|rules)\//u],
  ['formulas', new RegExp(inRoom, 'u')],
  ['case', /^repair\/case\/(?!words)/u],
  ['job', /^repair\/(?!case\/)/u],
];

function chunkOf(id: string): string | undefined {
  const file = id.replace(modules, '');
  return chunks.find(([, files]) => files.test(file))?.[0];
}

const bundle = await rollup({
  input: Object.fromEntries([...entries().values()].map((file) => [file, join(modules, `${file}.js`)])),
  plugins: [declarationsApart()],
  treeshake: { moduleSideEffects: false },
  onLog: (_, { message }) => {
    throw new Error(message);
  },
});
for (const [format, extension] of [
  ['es', 'js'],
  ['cjs', 'cjs'],
] as const)
  await bundle.write({
    dir: dist,
    format,
    entryFileNames: `[name].${extension}`,
    chunkFileNames: `shared/[name].${extension}`,
    manualChunks: chunkOf,
    onlyExplicitManualChunks: true,
  });
await bundle.close();

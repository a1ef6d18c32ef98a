import { defineConfig } from 'tsup';
import manifest from './package.json' with { type: 'json' };

/** The entries that CommonJS can require: each is bundled, with what they share in common chunks. */
const required = Object.values(manifest.exports)
  .flatMap((entry) => (typeof entry === 'string' ? [] : [entry.require]))
  .map((path) => path.replace(/^\.\/dist\/(.*)\.cjs$/u, '$1'));

export default defineConfig([
  // One file for each source file: a bundled chunk would keep what nobody imports.
  {
    entry: ['src/**/*.ts', '!src/cli/**', '!src/cli.ts'],
    format: 'esm',
    bundle: false,
    target: 'node20',
    outDir: 'dist',
  },
  // The command is bundled, so that it starts fast.
  {
    entry: { cli: 'src/cli.ts' },
    format: 'esm',
    noExternal: ['zod'],
    splitting: true,
    target: 'node20',
    outDir: 'dist',
  },
  {
    entry: Object.fromEntries(required.map((name) => [name, `src/${name}.ts`])),
    format: 'cjs',
    splitting: true,
    target: 'node20',
    outDir: 'dist',
  },
]);

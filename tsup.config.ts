import { readFileSync, writeFileSync } from 'node:fs';
import { defineConfig } from 'tsup';
import { caseJsonSchema } from './src/json/case-json-schema.js';

/** What the command carries inside, so that it starts fast; their licences ask to travel with them. */
const bundled: readonly string[] = ['csv-parse'];

function writeLicences(): void {
  const texts = bundled.map((name) => {
    const { version } = JSON.parse(readFileSync(`node_modules/${name}/package.json`, 'utf8')) as { version: string };
    return `${name} ${version}, bundled into cli.js and its chunks\n\n${readFileSync(`node_modules/${name}/LICENSE`, 'utf8').trim()}\n`;
  });
  writeFileSync('dist/LICENSES.txt', texts.join(`\n${'-'.repeat(80)}\n\n`));
}

export default defineConfig([
  // One file for each source file, for bundlers: a bundled chunk would keep what nobody imports. `docs/bundle.ts` makes the
  // entries for Node of them.
  {
    entry: ['src/**/*.ts', '!src/cli/**', '!src/cli.ts'],
    format: 'esm',
    bundle: false,
    target: 'node20',
    outDir: 'dist/modules',
  },
  // The command is bundled, so that it starts fast.
  {
    entry: { cli: 'src/cli.ts' },
    format: 'esm',
    noExternal: [...bundled],
    onSuccess: async () => {
      writeLicences();
      writeFileSync('dist/case.schema.json', `${JSON.stringify(caseJsonSchema(), null, 2)}\n`);
    },
    splitting: true,
    target: 'node20',
    outDir: 'dist',
  },
]);

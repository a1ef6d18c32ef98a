import { writeFileSync } from 'node:fs';
import { defineConfig } from 'tsup';
import { caseJsonSchema } from './src/json/case-json-schema.js';

/**
 * One file for each source file, for bundlers: a bundled chunk would keep what nobody imports. `docs/bundle.ts` makes the
 * files for Node of them.
 */
export default defineConfig({
  entry: ['src/**/*.ts'],
  format: 'esm',
  bundle: false,
  target: 'node20',
  outDir: 'dist/modules',
  onSuccess: async () => {
    writeFileSync('dist/case.schema.json', `${JSON.stringify(caseJsonSchema(), null, 2)}\n`);
  },
});

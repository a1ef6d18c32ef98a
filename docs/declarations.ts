/**
 * Writes the types of the package into dist, file by file as the JavaScript stands: `npm run build:types`.
 *
 * The compiler's own declarations are what an ESM import reads. A CommonJS `require` reads the same text once more under
 * `.d.cts`, with its imports led to the other `.d.cts`. Rolled up, they took four times as long.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { entries } from './contents.js';

const root = fileURLToPath(new URL('..', import.meta.url));

const { config } = ts.readConfigFile(join(root, 'tsconfig.json'), (path) => readFileSync(path, 'utf8'));
const { options } = ts.parseJsonConfigFileContent(config, ts.sys, root);
const program = ts.createProgram(
  [...entries().values()].map((file) => join(root, `src/${file}.ts`)),
  {
    ...options,
    noEmit: false,
    // `npm run types` has checked them.
    noCheck: true,
    declaration: true,
    emitDeclarationOnly: true,
    rootDir: join(root, 'src'),
    outDir: join(root, 'dist'),
  },
);

const { diagnostics } = program.emit(undefined, (path, text) => {
  ts.sys.writeFile(path, text);
  const required = text.replaceAll(/(['"])(\.{1,2}\/[^'"]+)\.js\1/gu, '$1$2.cjs$1');
  ts.sys.writeFile(path.replace(/\.d\.ts$/u, '.d.cts'), required);
});
if (diagnostics.length > 0) {
  process.stderr.write(ts.formatDiagnostics(diagnostics, ts.createCompilerHost(options)));
  process.exitCode = 1;
}

import { fileURLToPath } from 'node:url';
// The least version that reads the types: before it, `export type *` was not known.
import ts from 'typescript-least';
import { describe, expect, it } from 'vitest';
import { entries } from '../../docs/contents.js';

const root = fileURLToPath(new URL('../../', import.meta.url));

const use = `
import { gauge, length, stress } from 'hoopwright';
import { hoopStress } from 'hoopwright/pipe';
const sigma = hoopStress({
  pressure: gauge.psi(150),
  outsideDiameter: length.inch(12.75),
  wallThickness: length.inch(0.33),
});
const text: string = stress.inPsi(sigma).toFixed(0);
`;

/** A program of somebody else that imports every entry, as its compiler reads it from the built package. */
function messagesOf(extension: 'mts' | 'cts', code: string): string[] {
  const imports = [...entries().keys()].map(
    (entry, index) => `import * as e${index} from 'hoopwright${entry.slice(1)}';`,
  );
  const file = `${root}build/embedder.${extension}`;
  const options: ts.CompilerOptions = {
    noEmit: true,
    strict: true,
    exactOptionalPropertyTypes: true,
    target: ts.ScriptTarget.ES2022,
    lib: ['lib.es2022.d.ts'],
    module: ts.ModuleKind.Node16,
    moduleResolution: ts.ModuleResolutionKind.Node16,
    types: [],
  };
  const host = ts.createCompilerHost(options);
  const { getSourceFile, fileExists } = host;
  host.fileExists = (path) => path === file || fileExists(path);
  host.getSourceFile = (path, ...others) =>
    path === file
      ? ts.createSourceFile(path, `${imports.join('\n')}\n${code}`, ts.ScriptTarget.ES2022)
      : getSourceFile(path, ...others);
  const program = ts.createProgram([file], options, host);
  return ts
    .getPreEmitDiagnostics(program)
    .map(({ messageText }) => ts.flattenDiagnosticMessageText(messageText, '\n').split('\n')[0] ?? '');
}

describe('the packed types under TypeScript 5.0, the least that they are stated for', () => {
  it.each(['mts', 'cts'] as const)('compile in a strict .%s program that imports every entry', (extension) => {
    expect(ts.version).toBe('5.0.4');
    expect(messagesOf(extension, use)).toEqual([]);
  });

  it('still keep two kinds apart', () => {
    const wrong =
      "import { absolute, type GaugePressure } from 'hoopwright';\nexport const x: GaugePressure = absolute.bar(5);";
    expect(messagesOf('mts', wrong)).toEqual(["Type 'AbsolutePressure' is not assignable to type 'GaugePressure'."]);
  });
});

import { execFileSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { transformSync } from 'esbuild';
import ts from 'typescript';
import { describe, expect, it, test } from 'vitest';
import { run } from '../cli/run.js';

const PAGES = [
  'embedding.md',
  'surveys.md',
  'errors.md',
  ...['tutorial', 'how-to', 'why'].flatMap((folder) =>
    readdirSync(`docs/${folder}`).flatMap((file) => (file.endsWith('.md') ? [`${folder}/${file}`] : [])),
  ),
];

interface Snippet {
  readonly page: string;
  readonly code: string;
  /** What the page says that it prints. */
  readonly prints: string | undefined;
}

/** A page whose programs another test runs. */
const COMPILED = ['plan.md'];

const snippetsOf = (pages: readonly string[]) =>
  pages.flatMap((page): Snippet[] => {
    const text = readFileSync(`docs/${page}`, 'utf8');
    return [...text.matchAll(/```ts\n(.*?)```\n+(?:```text\n(.*?)```)?/gsu)].map(([, code = '', prints]) => ({
      page,
      code,
      prints,
    }));
  });

const snippets = snippetsOf(PAGES);
const compiled = [...snippets, ...snippetsOf(COMPILED)];

describe('the programs on the pages', () => {
  it('compile in strict mode, each as a file of its own', () => {
    const names = compiled.map((_, index) => `snippet-${index}.ts`);
    const options: ts.CompilerOptions = {
      strict: true,
      exactOptionalPropertyTypes: true,
      noUncheckedIndexedAccess: true,
      noUnusedLocals: true,
      target: ts.ScriptTarget.ES2022,
      lib: ['lib.es2023.d.ts', 'lib.dom.d.ts'],
      module: ts.ModuleKind.ESNext,
      moduleResolution: ts.ModuleResolutionKind.Bundler,
      moduleDetection: ts.ModuleDetectionKind.Force,
      resolveJsonModule: true,
      esModuleInterop: true,
      types: ['node'],
      skipLibCheck: true,
      noEmit: true,
      paths: { hoopwright: ['./src/index.ts'], 'hoopwright/*.json': ['./dist/*.json'], 'hoopwright/*': ['./src/*.ts'] },
    };
    const host = ts.createCompilerHost(options);
    const { getSourceFile, fileExists } = host;
    host.fileExists = (path) => names.includes(path) || fileExists.call(host, path);
    host.getSourceFile = (path, ...more) => {
      const at = names.indexOf(path.replace(`${process.cwd()}/`, ''));
      if (at < 0) return getSourceFile.call(host, path, ...more);
      return ts.createSourceFile(path, compiled[at]?.code ?? '', ts.ScriptTarget.ES2022, true);
    };
    const program = ts.createProgram(names, options, host);
    const problems = names.flatMap((name) =>
      ts
        .getPreEmitDiagnostics(program, program.getSourceFile(name))
        .map(({ messageText }) => ts.flattenDiagnosticMessageText(messageText, '\n')),
    );
    expect(problems).toEqual([]);
    expect(snippets.length).toBeGreaterThanOrEqual(10);
  });

  test.each(snippets)('$page program $# prints what the page says', ({ code, prints }) => {
    const { code: script } = transformSync(code, { loader: 'ts', format: 'esm' });
    const printed = execFileSync(process.execPath, ['--input-type=module', '--eval', script], { encoding: 'utf8' });
    expect(printed).toBe(prints ?? '');
    expect(printed.length).toBeGreaterThan(3);
  });
});

describe('docs/surveys.md', () => {
  const page = readFileSync('docs/surveys.md', 'utf8');
  const commands = /```sh\n(.*?)```/su.exec(page)?.[1]?.trim().split('\n') ?? [];
  const files = { 'docs/examples/survey.csv': readFileSync('docs/examples/survey.csv', 'utf8') };

  test.each(commands)('%s', async (command) => {
    const words = [...command.matchAll(/(?:[^\s"]|"[^"]*")+/gu)].map(([word]) => word.replaceAll('"', ''));
    const { code, out } = await run(words.slice(1), files);
    expect(code).toBe(0);
    expect(out.split('\n').length).toBeGreaterThan(2);
  });

  it('quotes the head of the answer as it is', async () => {
    const words = [...(commands[0] ?? '').matchAll(/(?:[^\s"]|"[^"]*")+/gu)].map(([word]) => word.replaceAll('"', ''));
    const { out } = await run(words.slice(1), files);
    expect(page).toContain(`\`\`\`text\n${out.split('\n')[0]}\n`);
  });
});

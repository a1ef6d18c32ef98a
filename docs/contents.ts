/**
 * Writes the entries of the package from its rooms and kinds: `npm run contents`.
 *
 * `src/index.ts` holds the job, the kinds, the rule sets and the record of a calculation; each room has an entry of its own
 * beside it (`src/pipe.ts`), and each kind of quantity is an entry as it stands. From a room an entry lists the functions
 * and types that the room's index exports. Left out are declarations and other constants (`hoopwright/formulas`), whatever
 * `hoopwright/tables` exports, and whatever is marked `@internal`, such as a guard that two files of a room share.
 * package.json repeats the entries as its `exports`, so these are written from the same lists.
 */
import { execFileSync } from 'node:child_process';
import { readFileSync, realpathSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';

const root = fileURLToPath(new URL('..', import.meta.url));

/** The rooms that have an entry of their own, in the order in which data flows, and what each holds. */
export const rooms: Readonly<Record<string, string>> = {
  rules: 'rule sets as data',
  mechanics: 'mechanics that several rooms need',
  pipe: 'stresses, design pressure, remaining strength and wall loss of a pipe',
  laminate: 'allowable strain, thickness, leak resistance and extent of the laminate',
  wrap: 'tape and sheet: layers, lengths, rolls',
  resin: 'what is mixed: volumes, ratios, batches',
  cure: 'temperature, time and degree of cure',
  site: 'whether work may start',
  seal: 'how a leak is held first',
  acceptance: 'hardness, findings and the pressure test',
  compare: 'one case by two rule sets, each difference by the rule that makes it',
  survey: 'many metal losses at once: safe pressure, growth, which to repair first',
  doubt: 'what a design hangs on: sensitivity, tolerances, the chance to fall short',
};

/** The parts of the root entry. */
const parts: readonly (readonly [room: string, heading: string])[] = [
  ['repair', 'The whole job.'],
  ['quantity', 'Quantities: a namespace and a type for each kind, text, conversions.'],
  ['formula', 'Refusals and the record of a calculation.'],
  ['rules', 'Rule sets as data.'],
];

/** What users need of formula/; guards and declarations are for those who write formulas. */
const fromFormula = new Set([
  'Attempt',
  'attempt',
  'CalculationError',
  'CalculationErrorCode',
  'createRecorder',
  'Evidence',
  'isCalculationError',
  'RecordedDecision',
  'RecordedEntry',
  'RecordedHeading',
  'RecordedStep',
  'Recorder',
  'Refusal',
  'SourceKey',
  'SourceTag',
]);

/** Rooms whose constants are part of what users import. */
const constantsOf = new Set(['rules', 'repair']);

function program(): ts.Program {
  const file = ts.readConfigFile(join(root, 'tsconfig.json'), ts.sys.readFile);
  const { options } = ts.parseJsonConfigFileContent(file.config, ts.sys, root);
  const indexes = [...parts.map(([room]) => room), ...Object.keys(rooms)].map((room) => `src/${room}/index.ts`);
  return ts.createProgram(
    [...indexes, 'src/tables.ts'].map((entry) => join(root, entry)),
    options,
  );
}

interface Exported {
  readonly name: string;
  readonly sort: 'type' | 'function' | 'constant';
}

function exportsOf(path: string, of: ts.Program): Exported[] {
  const checker = of.getTypeChecker();
  const source = of.getSourceFile(join(root, path));
  const module = source === undefined ? undefined : checker.getSymbolAtLocation(source);
  if (module === undefined) return [];
  const originalOf = (symbol: ts.Symbol): ts.Symbol =>
    symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol;
  const isPublic = (symbol: ts.Symbol): boolean =>
    originalOf(symbol)
      .getJsDocTags(checker)
      .every(({ name }) => name !== 'internal');
  return checker
    .getExportsOfModule(module)
    .filter(isPublic)
    .map((symbol) => {
      const original = originalOf(symbol);
      const callable = ts.SymbolFlags.Function | ts.SymbolFlags.Class | ts.SymbolFlags.ValueModule;
      if (original.flags & callable) return { name: symbol.name, sort: 'function' };
      if (!(original.flags & ts.SymbolFlags.Value)) return { name: symbol.name, sort: 'type' };
      const calls = checker.getTypeOfSymbol(original).getCallSignatures();
      return { name: symbol.name, sort: calls.length > 0 ? 'function' : 'constant' };
    });
}

function listOf(room: string, of: ts.Program, tables: ReadonlySet<string>): string {
  const names = exportsOf(`src/${room}/index.ts`, of)
    .filter(({ name, sort }) => {
      if (room === 'formula') return fromFormula.has(name);
      if (sort === 'constant' && !constantsOf.has(room)) return false;
      return !tables.has(name);
    })
    .map(({ name, sort }) => (sort === 'type' ? `type ${name}` : name));
  return `export { ${names.join(', ')} } from './${room}/index.js';\n`;
}

/** The kinds by the name of their entry: `gauge` stands in gauge-pressure.ts. */
function kinds(): (readonly [entry: string, file: string])[] {
  const index = readFileSync(join(root, 'src/quantity/index.ts'), 'utf8');
  const found = [...index.matchAll(/^export \* as (\w+) from '\.\/([a-z-]+)\.js';$/gmu)];
  const kebab = (name: string): string => name.replaceAll(/[A-Z]/gu, (letter) => `-${letter.toLowerCase()}`);
  return found.map(([, name = '', file = '']) => [kebab(name), `quantity/${file}`] as const);
}

/** Every entry and the file of `src` that it is, the root first. */
export function entries(): ReadonlyMap<string, string> {
  const own = ['formulas', 'tables', 'report', 'json', ...Object.keys(rooms)].map((name) => [name, name] as const);
  const subpaths = [...own, ...kinds()].map(([entry, file]) => [`./${entry}`, file] as const);
  return new Map([['.', 'index'], ...subpaths]);
}

/**
 * package.json with the entries as its exports: `module` for bundlers, which know that condition, stands before `import` for
 * Node. Types stand beside the latter and beside `require`, so they need no line of their own.
 */
function manifest(): string {
  const lines = [...entries()].map(
    ([entry, file]) =>
      `"${entry}": { "module": "./dist/modules/${file}.js", "import": "./dist/${file}.js", "require": "./dist/${file}.cjs" },`,
  );
  const text = readFileSync(join(root, 'package.json'), 'utf8');
  return text.replace(
    /"exports": \{.*?\n {2}\}/su,
    `"exports": {\n${lines.join('\n')}\n"./case.schema.json": "./dist/case.schema.json",\n"./package.json": "./package.json"\n}`,
  );
}

// biome sorts and breaks the lists as it does everywhere else.
function formatted(target: string, input: string): string {
  const biome = join(root, 'node_modules/.bin/biome');
  return execFileSync(biome, ['check', '--write', `--stdin-file-path=${target}`], {
    input,
    cwd: root,
    encoding: 'utf8',
  });
}

/** The comment of an entry: typedoc would take one without the tag for that of every symbol below it. */
function head(words: string, entry: string): string {
  return `/**\n * \`hoopwright${entry}\`: ${words}. Written by \`npm run contents\`.\n *\n * @module\n */\n`;
}

/** The text that each written file must have. */
export function contents(): ReadonlyMap<string, string> {
  const built = program();
  const tables = new Set(exportsOf('src/tables.ts', built).map(({ name }) => name));
  const sections = parts.map(([room, heading]) => {
    const list = room === 'quantity' ? "export * from './quantity/index.js';\n" : listOf(room, built, tables);
    return `// ${heading}\n\n${list}`;
  });
  const texts: [string, string][] = [
    ['src/index.ts', `${head('the whole job, the kinds and the rule sets', '')}\n${sections.join('\n')}`],
    ...Object.entries(rooms).map(([room, words]): [string, string] => [
      `src/${room}.ts`,
      `${head(words, `/${room}`)}${listOf(room, built, tables)}`,
    ]),
    ['package.json', manifest()],
  ];
  return new Map(texts.map(([file, text]) => [file, formatted(file, text)]));
}

if (process.argv[1] !== undefined && realpathSync(process.argv[1]) === fileURLToPath(import.meta.url)) {
  for (const [file, text] of contents()) writeFileSync(join(root, file), text);
}

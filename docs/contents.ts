/**
 * Writes src/index.ts, the table of contents of the package: `npm run contents`.
 *
 * From every room it lists the functions and types that the room's index exports. Left out are declarations and other
 * constants (`hoopwright/formulas`) and whatever `hoopwright/tables` exports, so that one import costs one function; and whatever is
 * marked `@internal`, such as a guard that two files of a room share.
 */
import { execFileSync } from 'node:child_process';
import { existsSync, realpathSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';

const root = fileURLToPath(new URL('..', import.meta.url));
const target = 'src/index.ts';

/** The rooms in the order in which data flows, and what each heading says. */
const rooms: readonly (readonly [room: string, heading: string])[] = [
  ['quantity', 'Quantities: constructors, readers, text.'],
  ['formula', 'Refusals and the record of a calculation.'],
  ['rules', 'Rule sets as data.'],
  ['mechanics', 'Mechanics that several rooms need.'],
  ['pipe', 'The pipe: stresses, remaining strength, wall loss.'],
  ['laminate', 'The laminate: strain, thickness, leak resistance, extent.'],
  ['wrap', 'The wrap: tape, sheet, layers, rolls.'],
  ['resin', 'The mix: volumes, ratios, batches.'],
  ['cure', 'The cure: temperature, time, degree.'],
  ['site', 'The site: whether work may start.'],
  ['seal', 'The leak seal.'],
  ['acceptance', 'Acceptance and pressure test.'],
  ['repair', 'The whole job.'],
];

/** What users need of formula/; guards and declarations are for those who write formulas. */
const fromFormula = new Set([
  'CalculationError',
  'CalculationErrorCode',
  'createRecorder',
  'Evidence',
  'isCalculationError',
  'RecordedEntry',
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
  const entries = [...rooms.map(([room]) => `src/${room}/index.ts`), 'src/tables.ts'];
  return ts.createProgram(entries.map((entry) => join(root, entry)).filter(existsSync), options);
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

function listOf(room: string, of: ts.Program, tables: ReadonlySet<string>): string[] {
  return exportsOf(`src/${room}/index.ts`, of)
    .filter(({ name, sort }) => {
      if (room === 'formula') return fromFormula.has(name);
      if (sort === 'constant' && !constantsOf.has(room)) return false;
      return !tables.has(name);
    })
    .map(({ name, sort }) => (sort === 'type' ? `type ${name}` : name));
}

/** The text that src/index.ts must have. */
export function contents(): string {
  const built = program();
  const tables = new Set(exportsOf('src/tables.ts', built).map(({ name }) => name));
  const parts = rooms.flatMap(([room, heading]) => {
    if (room === 'quantity') return [`// ${heading}\n\nexport * from './quantity/index.js';\n`];
    const names = listOf(room, built, tables);
    return names.length === 0 ? [] : [`// ${heading}\n\nexport { ${names.join(', ')} } from './${room}/index.js';\n`];
  });
  const text = `/** Table of contents, written by \`npm run contents\`. */\n\n${parts.join('\n')}`;
  // biome sorts and breaks the lists as it does everywhere else.
  return execFileSync(join(root, 'node_modules/.bin/biome'), ['check', '--write', `--stdin-file-path=${target}`], {
    input: text,
    cwd: root,
    encoding: 'utf8',
  });
}

if (process.argv[1] !== undefined && realpathSync(process.argv[1]) === fileURLToPath(import.meta.url)) {
  writeFileSync(join(root, target), contents());
}

import { execFileSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { posix } from 'node:path';
import { describe, expect, it } from 'vitest';
import { entries } from '../../docs/contents.js';
import { caseJsonSchema } from '../../src/json/index.js';

const script = `
const { createRequire } = await import('node:module');
const require = createRequire(process.cwd() + '/package.json');
const found = {};
for (const name of process.argv.slice(1))
  found[name] = [Object.keys(await import(name)), Object.keys(require(name))].map((names) => names.sort());
console.log(JSON.stringify(found));
`;

/** What a program is that imports several entries, and one that has both copies of the package. */
const copies = `
const { createRequire } = await import('node:module');
const require = createRequire(process.cwd() + '/package.json');
const [job, pipe, list, json] = await Promise.all(
  ['hoopwright', 'hoopwright/pipe', 'hoopwright/formulas', 'hoopwright/json'].map((name) => import(name)),
);
const refused = [pipe, require('hoopwright/pipe')].map(({ hoopStress }) => job.attempt(() => hoopStress({})).refusal);
console.log(JSON.stringify({
  declared: list.formulaOf(pipe.hoopStress)?.id,
  sameClass: refused.map((refusal) => refusal instanceof job.CalculationError),
  recognised: refused.map((refusal) => job.isCalculationError(refusal)),
}));
`;

/** Every file that an entry loads. */
function loaded(file: string, seen = new Set<string>()): ReadonlySet<string> {
  if (seen.has(file)) return seen;
  seen.add(file);
  for (const [, from = ''] of readFileSync(file, 'utf8').matchAll(/^import .*?'(\.[^']+)';$/gmu))
    loaded(posix.join(posix.dirname(file), from), seen);
  return seen;
}

describe('the entries of the built package', () => {
  const names = [...entries().keys()].map((entry) => `hoopwright${entry.slice(1)}`);
  const found: Record<string, [string[], string[]]> = JSON.parse(
    execFileSync(process.execPath, ['--input-type=module', '--eval', script, ...names], { encoding: 'utf8' }),
  );

  it.each(names)('%s holds the same by import and by require', (name) => {
    const [imported, required] = found[name] ?? [[], []];
    expect(imported.length).toBeGreaterThan(0);
    expect(required).toEqual(imported);
  });

  it('share their functions, and know a refusal of the other copy of the package', () => {
    const text = execFileSync(process.execPath, ['--input-type=module', '--eval', copies], { encoding: 'utf8' });
    expect(JSON.parse(text)).toEqual({
      declared: 'pipe/hoop-stress',
      sameClass: [true, false],
      recognised: [true, true],
    });
  });

  it('load a few files on Node, and the job none of the declarations', () => {
    for (const entry of ['index', 'json', 'formulas', 'report'])
      expect(loaded(`dist/${entry}.js`).size).toBeLessThan(12);
    const textsOf = (entry: string): string =>
      [...loaded(`dist/${entry}.js`)].map((file) => readFileSync(file, 'utf8')).join('\n');
    const declaration = 'hoopStressFormula = /* @__PURE__ */ formula(';
    expect(textsOf('formulas').includes(declaration)).toBe(true);
    expect(textsOf('index').includes(declaration)).toBe(false);
    expect(textsOf('index').includes('function hoopStress(')).toBe(true);
  });

  it('carry the licence text of every package that the command bundles', () => {
    const chunks = readdirSync('dist').filter((name) => name.endsWith('.js'));
    const command = chunks.map((name) => readFileSync(`dist/${name}`, 'utf8')).join('\n');
    const inside = new Set(
      [...command.matchAll(/^\/\/ node_modules\/((?:@[^/]+\/)?[^/]+)/gmu)].map(([, name]) => name),
    );
    const licences = readFileSync('dist/LICENSES.txt', 'utf8');
    for (const name of inside) expect(licences).toMatch(new RegExp(`^${name} \\d`, 'mu'));
  });

  it('hold the schema of a case as a file that an editor can name', () => {
    const found = createRequire(import.meta.url).resolve('hoopwright/case.schema.json');
    expect(JSON.parse(readFileSync(found, 'utf8'))).toEqual(JSON.parse(JSON.stringify(caseJsonSchema())));
  });

  it('are all that package.json exports', () => {
    const { exports } = JSON.parse(readFileSync('package.json', 'utf8'));
    expect(Object.keys(exports).filter((entry) => !entry.endsWith('.json'))).toEqual([...entries().keys()]);
  });
});

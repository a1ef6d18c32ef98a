import { execFileSync, spawnSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { createRequire, isBuiltin } from 'node:module';
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

  it('lend the command of a formula the declarations of its room alone, and that of a design none', () => {
    const lent = (...args: string[]): string[] => {
      const program = `process.argv = [process.argv[0], ...${JSON.stringify(['hoopwright', ...args])}];
        process.on('exit', () => console.error(Object.keys(require.cache).join('\\n')));
        require('./dist/cli.cjs');`;
      const { stderr, status } = spawnSync(process.execPath, ['-e', program], { encoding: 'utf8' });
      expect(status).toBe(0);
      return stderr.split('\n').flatMap((file) => /[a-z]+(?=-declarations\.cjs$)/u.exec(file) ?? []);
    };
    const inputs = ['pressure=16 bar', 'outsideDiameter=219.1 mm', 'wallThickness=8.18 mm'];
    expect(lent('evaluate', 'pipe/hoop-stress', ...inputs)).toEqual(['pipe']);
    expect(lent('design', 'docs/examples/cooling-water-leak.json')).toEqual([]);
    expect(lent('design', 'docs/examples/cooling-water-leak.json', '--full').length).toBeGreaterThan(5);
  });

  it('carry the licence text of the package that the command bundles', () => {
    const texts = readdirSync('dist/shared').map((name) => readFileSync(`dist/shared/${name}`, 'utf8'));
    expect(texts.some((text) => text.includes('class CsvError'))).toBe(true);
    expect(readFileSync('dist/LICENSES.txt', 'utf8')).toMatch(/^csv-parse \d.*\n\nThe MIT License/u);
  });

  it('leave nothing for the command to find but what it holds itself', () => {
    const names = readdirSync('dist/shared').filter((name) => name.endsWith('.cjs'));
    const asked = ['cli.cjs', ...names.map((name) => `shared/${name}`)].flatMap((file) =>
      [...readFileSync(`dist/${file}`, 'utf8').matchAll(/require\('([^']+)'\)/gu)].map(([, name = '']) => name),
    );
    expect(asked.length).toBeGreaterThan(0);
    for (const name of asked) expect(name.startsWith('.') || isBuiltin(name), name).toBe(true);
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

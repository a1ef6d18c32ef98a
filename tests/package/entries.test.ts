import { execFileSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
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

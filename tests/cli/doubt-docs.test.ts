import { readFileSync } from 'node:fs';
import { inspect } from 'node:util';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import * as compare from '../../src/compare.js';
import * as doubt from '../../src/doubt.js';
import { parseCase } from '../../src/json/index.js';
import * as report from '../../src/report.js';
import { coefficientTable } from '../../src/rules/index.js';
import { exampleText } from '../json/examples.js';
import { run } from './run.js';

const modules: Readonly<Record<string, object>> = { compare, doubt, report };

const pageOf = (name: string): string => readFileSync(new URL(`../../docs/${name}`, import.meta.url), 'utf8');

/** Each piece of code of a page with what the page says that it prints. */
function examplesOf(name: string): [code: string, printed: string][] {
  const found = pageOf(name).matchAll(/```ts\n(.*?)```\n\nIt prints.*?```text\n(.*?)```/gsu);
  return [...found].map(([, code = '', printed = '']) => [code, printed]);
}

/** What a piece of code prints with the first example as `repairCase`. */
function printedBy(code: string): string {
  const called = code.replaceAll(/import \{ (.*?) \} from 'hoopwright\/(\w+)';/gu, "const { $1 } = modules['$2'];");
  const { outputText } = ts.transpileModule(called, { compilerOptions: { target: ts.ScriptTarget.ES2022 } });
  const lines: string[] = [];
  const log = (...said: unknown[]) =>
    void lines.push(said.map((each) => (typeof each === 'string' ? each : inspect(each))).join(' '));
  const call = new Function('modules', 'console', 'repairCase', outputText);
  call(modules, { log }, parseCase(exampleText('cooling-water-leak.json')).case);
  return `${lines.join('\n')}\n`;
}

describe.each(['compare.md', 'doubt.md'])('docs/%s', (name) => {
  it('prints what it says that it prints', () => {
    const examples = examplesOf(name);
    expect(examples).toHaveLength(name === 'compare.md' ? 1 : 3);
    for (const [code, printed] of examples) expect(printedBy(code)).toBe(printed);
  });

  it('shows commands that run', async () => {
    const commands = [...pageOf(name).matchAll(/```sh\n(.*?)\n```/gsu)].flatMap(([, lines = '']) =>
      lines.split(/\n?^hoopwright /mu).slice(1),
    );
    expect(commands.length).toBeGreaterThan(0);
    const files = { 'docs/examples/cooling-water-leak.json': exampleText('cooling-water-leak.json') };
    for (const command of commands) {
      const words = [...command.matchAll(/(?:[^\s"]|"[^"]*")+/gu)].map(([word]) => word.replaceAll('"', ''));
      const { code, err } = await run(words, files);
      expect(code, err).toBe(0);
    }
  });
});

describe('docs/compare.md', () => {
  it('lists the paths as the table of the coefficients has them', () => {
    const rows = [...pageOf('compare.md').matchAll(/^\| `([^`]+)` +\| (.+?) +\| (.+?) +\|$/gmu)];
    const listed = rows.map(([, path, kind, safer]) => [path, kind, safer]);
    expect(listed).toEqual([...coefficientTable].map(([path, { kind, safer }]) => [path, kind, safer]));
  });
});

describe('hoopwright doubt', () => {
  const files = { 'c.json': exampleText('cooling-water-leak.json') };
  it.each<[says: string, ...args: string[]]>([
    ['did you mean defect.remainingWall', '--within', 'defect.remainingWal=1 mm'],
    ['has no unit', '--within', 'defect.remainingWall=1'],
    ['FIELD=AMOUNT', '--within', 'defect.remainingWall'],
    ['--dependence none', '--spread', 'service.designPressure=normal(6 bar; 1 bar)'],
    ['standard deviation', '--dependence', 'none', '--spread', 'service.designPressure=normal(6 bar)'],
    ['no distribution here', '--dependence', 'none', '--spread', 'service.designPressure=triangle(6 bar; 1 bar)'],
    ['did you mean service.designPressure', '--dependence', 'none', '--spread', 'service.designPresure=none'],
    [
      '--samples',
      '--dependence',
      'none',
      '--spread',
      'service.designPressure=normal(6 bar; 1 bar)',
      '--samples',
      'many',
    ],
  ])('says %s where it is asked in other words', async (says, ...args) => {
    const { code, err, out } = await run(['doubt', 'c.json', ...args], files);
    expect(code).toBe(2);
    expect(err).toContain(says);
    expect(out).toBe('');
  });

  it('reads every distribution in the units of its field, a temperature by kelvins', async () => {
    const spread =
      'service.designTemperature=normal(34 degC; 2 K), laminate.energyReleaseRate=weibull(0 J/m2; 180 J/m2; 6), laminate.shearModulus=uniform(2.8 GPa; 3.2 GPa), service.designPressure=lognormal(5.5 bar; 0.5 bar), laminate.poissonRatio=none';
    const args = ['doubt', 'c.json', '--dependence', 'none', '--spread', spread, '--samples', '50', '--format', 'json'];
    const { code, out, err } = await run(args, files);
    expect(code, err).toBe(0);
    const { inputs } = JSON.parse(out);
    const stated = inputs.filter(({ distribution }: { distribution: unknown }) => distribution !== 'none');
    expect(stated.map(({ distribution }: { distribution: object }) => distribution)).toEqual([
      { shape: 'lognormal', mean: 550_000, standardDeviation: 50_000 },
      { shape: 'normal', mean: 307.15, standardDeviation: 2 },
      { shape: 'uniform', least: 2.8e9, most: 3.2e9 },
      { shape: 'Weibull minimum', location: 0, scale: 180, exponent: 6 },
    ]);
  });
});

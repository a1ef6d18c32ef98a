import { readFileSync } from 'node:fs';
import { createContext, runInContext } from 'node:vm';
import { transformSync } from 'esbuild';
import { describe, expect, test } from 'vitest';
import * as library from '../../src/index.js';
import * as json from '../../src/json/index.js';
import * as report from '../../src/report/index.js';
import { exampleNames, exampleText } from '../json/examples.js';
import { run } from './run.js';

const page = readFileSync(new URL('../../docs/plan.md', import.meta.url), 'utf8');
const blocks = (language: string): string[] =>
  [...page.matchAll(new RegExp(`^\`\`\`${language}\n(.*?)^\`\`\``, 'gmsu'))].map(([, block]) => block ?? '');

describe('docs/plan.md', () => {
  const commands = blocks('sh').flatMap((block) => block.trim().split('\n'));

  test.each(commands)('%s', async (line) => {
    const files = Object.fromEntries(exampleNames.map((name) => [`docs/examples/${name}`, exampleText(name)]));
    const [command = '', exit = '0'] = line.split(/\s+# exit /u);
    const words = [...command.matchAll(/(?:[^\s"]|"[^"]*")+/gu)].map(([word]) => word.replaceAll('"', ''));
    const { code, out, err } = await run(words.slice(1), files);
    expect([String(code), err]).toEqual([exit, '']);
    expect(out.length).toBeGreaterThan(100);
  });

  test('its code prints what its comments say', () => {
    const [code = ''] = blocks('ts');
    const promised = [...code.matchAll(/\/\/ (.+)$/gmu)].map(([, text]) => text);
    const body = code.replaceAll(/^import .*$/gmu, '');
    const printed: string[] = [];
    const console = { log: (value: unknown) => void printed.push(String(value)) };
    const context = createContext({ ...library, ...json, ...report, readFileSync, console });
    runInContext(transformSync(body, { loader: 'ts' }).code, context);
    expect(promised.length).toBeGreaterThan(2);
    expect(printed).toEqual(promised);
    for (const [, names = ''] of code.matchAll(/^import \{ (.*) \}/gmu)) {
      for (const name of names.split(', ')) expect(body).toContain(name);
    }
  });
});

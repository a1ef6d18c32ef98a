import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { figures } from '../../docs/figures.js';
import { run } from '../cli/run.js';
import { exampleFiles, fencesOf, quotes, wordsOf } from './examples.js';

const FOLDERS = ['tutorial', 'how-to', 'why'];
const pages = FOLDERS.flatMap((folder) => readdirSync(`docs/${folder}`).map((file) => `${folder}/${file}`));

describe.each(pages.filter((page) => page.endsWith('.md')))('docs/%s', (page) => {
  const files = exampleFiles();
  let answer = '';
  test('runs its commands on the files that it shows, and quotes their answers as they are', async () => {
    for (const { language, text, before } of fencesOf(page)) {
      const [name] = [...before.matchAll(/`([\w-]+\.(?:json|csv))`/gu)].map(([, file]) => file);
      if (language === 'json') {
        const shown = JSON.parse(text) as object;
        if (name !== undefined) {
          const known = files[name] === undefined ? {} : (JSON.parse(files[name]) as object);
          files[name] = JSON.stringify({ ...known, ...shown });
        }
      }
      if (language === 'csv' && name !== undefined) files[name] = text;
      if (language === 'ts') answer = '';
      if (language === 'sh')
        for (const line of text.trim().split('\n')) {
          const [command = '', exit = '0'] = line.split(/\s+# exit /u);
          const [program, ...args] = wordsOf(command);
          if (program !== 'hoopwright') continue;
          const { code, out, err } = await run(args, files);
          expect(code, `${command}\n${err}`).toBe(Number(exit));
          answer = `${out}${err}`;
        }
      // What a program prints is held by the test of the programs.
      if (language === 'text' && answer !== '')
        expect(quotes(answer, text), `${text}\nis not in\n${answer}`).toBe(true);
    }
  });
});

test('the figures are those that the formulas give: npm run figures', () => {
  for (const [name, svg] of figures()) expect(readFileSync(`docs/why/figures/${name}`, 'utf8'), name).toBe(svg);
});

test('docs/how-to/formula.md shows a file of the library as it is', () => {
  const page = readFileSync('docs/how-to/formula.md', 'utf8');
  const [, file = '', shown] = /^```ts file=(\S+)\n(.*?)^```$/msu.exec(page) ?? [];
  expect(shown).toBe(readFileSync(file, 'utf8'));
});

test('a quotation that is not in the answer is seen', () => {
  expect(quotes('a\nb\nc', 'a\n...\nc')).toBe(true);
  expect(quotes('a\nb\nc', 'a\nc')).toBe(false);
  expect(quotes('a\nb\nc', 'c\n...\na')).toBe(false);
});

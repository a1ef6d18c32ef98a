import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { withTables } from '../../docs/case-tables.js';
import { caseFields, decodeCase, isCaseError } from '../../src/json/index.js';
import { exampleDocument, exampleNames, exampleText } from '../json/examples.js';
import { run } from './run.js';

function blocksOf(page: string, language: string): string[] {
  const text = readFileSync(new URL(`../../docs/${page}`, import.meta.url), 'utf8');
  return [...text.matchAll(new RegExp(`^\`\`\`${language}\n(.*?)^\`\`\``, 'gmsu'))].map(([, block]) => block ?? '');
}

/** The words of a command as a shell would split them; these pages use double quotes only. */
function wordsOf(command: string): string[] {
  return [...command.matchAll(/(?:[^\s"]|"[^"]*")+/gu)].map(([word]) => word.replaceAll('"', ''));
}

describe('docs/command-line.md', () => {
  const files: Record<string, string> = {
    'depths.csv': blocksOf('command-line.md', 'csv')[0] ?? '',
    'claims.txt': blocksOf('command-line.md', 'text').find((block) => block.startsWith('1.1  ')) ?? '',
  };
  for (const name of exampleNames) files[`docs/examples/${name}`] = exampleText(name);
  const commands = blocksOf('command-line.md', 'sh').flatMap((block) => block.trim().split('\n'));

  test('shows more than a dozen commands', () => {
    expect(commands.length).toBeGreaterThan(12);
  });

  test.each(commands)('%s', async (line) => {
    const [command = '', exit = '0'] = line.split(/\s+# exit /u);
    const [program, ...args] = wordsOf(command);
    expect(program).toBe('hoopwright');
    const { code, out, err } = await run(args, files);
    expect(code, err).toBe(Number(exit));
    expect(out === '').toBe(code === 2);
    expect(err === '').toBe(code !== 2);
  });
});

describe('docs/case.md', () => {
  const fragments = blocksOf('case.md', 'json');

  test('shows fragments that a case can hold', () => {
    expect(fragments.length).toBeGreaterThan(4);
    for (const fragment of fragments) {
      const document = { ...exampleDocument(), ...JSON.parse(fragment) };
      expect(() => decodeCase(document), fragment).not.toThrow();
    }
  });

  test('shows the fields as the table of the case has them: npm run case-tables', () => {
    const page = readFileSync(new URL('../../docs/case.md', import.meta.url), 'utf8');
    expect(page).toBe(withTables(page));
    const shown = page.split('\n').filter((line) => line.startsWith('| `'));
    // The fields of a cure stand once, of three places; what is needed though it may be left out stands in a list besides.
    const fields = caseFields().filter(({ path }) => !/^(?:filler|seal\.putty)\.cure\./u.test(path));
    const needed = fields.filter((field) => field.needed !== undefined);
    expect(shown).toHaveLength(fields.length + needed.length);
  });

  test('quotes warnings of slips as they are', async () => {
    const document = exampleDocument('hydrocarbon-line-corrosion.json');
    document.laminate.cure.activationEnergy = '55 J/mol';
    document.pipe.outsideDiameter = '84.1 mm';
    document.defect.circumferentialWidth = '40 mm';
    const { err } = await run(['design', 'case.json', '--strict'], { 'case.json': JSON.stringify(document) });
    expect(blocksOf('case.md', 'text')[1]).toBe(err);
  });

  test('quotes errors as they are', () => {
    const document = exampleDocument();
    document.pipe = { outsideDiameter: '219.1 mm', wallThickness: '8.18', material: document.pipe.material };
    document.laminate.plyThicknes = '0.8 mm';
    const messages = [messagesOf(document)];
    const profile = exampleDocument();
    profile.defect.profile = [
      { position: '10 mm', depth: '1 mm' },
      { position: '5 mm', depth: '5.08 mm' },
    ];
    messages.push(messagesOf(profile));
    expect(blocksOf('case.md', 'text')[0]?.trim().split('\n')).toEqual(messages.flat());
  });
});

function messagesOf(document: unknown): string[] {
  try {
    decodeCase(document);
  } catch (error) {
    if (isCaseError(error)) return error.issues.map(({ message }) => message);
    throw error;
  }
  return [];
}

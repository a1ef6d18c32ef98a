import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, it, test } from 'vitest';
import { version } from '../src/repair/index.js';

const readme = readFileSync('README.md', 'utf8');
const manifest = JSON.parse(readFileSync('package.json', 'utf8'));

/** The fenced blocks of a language. */
function blocks(language: string): string[] {
  return [...readme.matchAll(new RegExp(`\`\`\`${language}\\n(.*?)\`\`\``, 'gs'))].map(([, code]) => code ?? '');
}

function run(args: readonly string[]): string {
  return execFileSync(process.execPath, args, { encoding: 'utf8' });
}

describe('the README', () => {
  it('links only to files that exist', () => {
    const links = [...readme.matchAll(/\]\(([^)#]+)\)/g)].map(([, link]) => link as string);
    expect(links.length).toBeGreaterThan(5);
    expect(links.filter((link) => !link.startsWith('http') && !existsSync(link))).toEqual([]);
  });

  it('names two commands that package.json has', () => {
    const [commands] = blocks('sh');
    expect(commands).toContain('npm ci && npm start');
    expect(commands).toContain('npm ci && npm test');
    expect(manifest.scripts).toMatchObject({ start: expect.any(String), test: expect.any(String) });
  });

  const [code = ''] = blocks('ts');
  test('its code prints what its comment says', () => {
    const promised = [...code.matchAll(/\/\/ (.+)$/gm)].map(([, text]) => text);
    expect(promised).toHaveLength(1);
    const printed = run(['--input-type=module', '--eval', code]);
    expect(printed.trim()).toBe(promised[0]);
  });

  const commandLines = blocks('sh')
    .flatMap((block) => block.split('\n'))
    .map((line) => line.replace(/\s+#.*$/, ''))
    .filter((line) => line.startsWith('hoopwright '));
  test.each(commandLines)('runs: %s', (line) => {
    const words = [...line.matchAll(/(?:[^\s"]|"[^"]*")+/g)].map(([word]) => word.replaceAll('"', ''));
    const args = words.slice(1).map((word) => (word === 'case.json' ? 'docs/examples/cooling-water-leak.json' : word));
    expect(run(['dist/cli.cjs', ...args]).length).toBeGreaterThan(100);
  });

  it('says every entry that the package exports, and leads to the page that lists the kinds', () => {
    const entries = Object.keys(manifest.exports).filter((entry) => !entry.endsWith('.json'));
    const ofKinds = entries.filter((entry) => manifest.exports[entry].import.includes('/quantity/'));
    for (const entry of entries.filter((each) => !ofKinds.includes(each)))
      expect(readme).toContain(`\`hoopwright${entry.slice(1)}\``);
    expect(ofKinds.length).toBeGreaterThan(30);
    const page = readFileSync('docs/quantities.md', 'utf8');
    for (const entry of ofKinds) expect(page).toContain(`\`hoopwright${entry.slice(1)}\``);
  });
});

describe('the version', () => {
  it('is the same in package.json, in the library, in CITATION.cff and at the top of the changelog', () => {
    expect(version).toBe(manifest.version);
    expect(readFileSync('CITATION.cff', 'utf8')).toContain(`\nversion: ${version}\n`);
    expect(readFileSync('CHANGELOG.md', 'utf8').match(/^## (\S+)/m)?.[1]).toBe(version);
  });

  it('has the same day of release in CITATION.cff and in the changelog, or none in either', () => {
    const cited = readFileSync('CITATION.cff', 'utf8').match(/^date-released: (\S+)$/m)?.[1] ?? 'unreleased';
    expect(readFileSync('CHANGELOG.md', 'utf8').match(/^## \S+ \((.+)\)$/m)?.[1]).toBe(cited);
  });
});

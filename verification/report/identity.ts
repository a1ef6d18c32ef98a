import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { SEED } from '../oracles/random.js';
import type { Report } from './shape.js';

/** What the report is about: version, lock file, seeds; and, apart from that, the machine and the commit. */

export const root = fileURLToPath(new URL('../../', import.meta.url));

const read = (path: string): string => readFileSync(new URL(`../../${path}`, import.meta.url), 'utf8');

/** The value of a top-level key of CITATION.cff, which holds one line a key. */
export function citationField(key: string): string {
  const line = read('CITATION.cff')
    .split('\n')
    .find((text) => text.startsWith(`${key}:`));
  if (line === undefined) throw new Error(`CITATION.cff has no ${key}`);
  return line
    .slice(key.length + 1)
    .trim()
    .replace(/^"(?<inside>.*)"$/u, '$<inside>');
}

function citationAuthors(): string[] {
  return [...read('CITATION.cff').matchAll(/^ {2}- (?:name|family-names): "?(?<name>[^"\n]+)"?$/gmu)].map(
    ({ groups }) => groups?.['name'] ?? '',
  );
}

export function identity(): Report['identity'] {
  const { name, version, license } = JSON.parse(read('package.json'));
  return {
    name,
    title: citationField('title'),
    version,
    licence: license,
    authors: citationAuthors(),
    lockHash: createHash('sha256').update(read('package-lock.json')).digest('hex'),
    seed: SEED,
    nodeMajor: 20,
  };
}

function git(...args: readonly string[]): string {
  try {
    return execFileSync('git', args, { cwd: root, encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'] }).trimEnd();
  } catch {
    return '';
  }
}

export function machine(): Report['volatile'] {
  const changed = git('status', '--porcelain', '--untracked-files=no')
    .split('\n')
    .map((line) => line.slice(3))
    .filter((path) => path !== '' && path !== 'verification/report/report.md');
  return {
    commit: git('rev-parse', 'HEAD') || 'not under version control',
    changed,
    node: process.versions.node,
    v8: process.versions.v8,
    platform: `${process.platform} ${process.arch}`,
  };
}

/** How to cite this version. */
export function bibtex({ name, title, version, authors }: Report['identity']): string {
  return [
    `@software{${name}_${version.replaceAll('.', '_')},`,
    // A second pair of braces keeps a collective name in one piece.
    `  author  = {${authors.map((author) => `{${author}}`).join(' and ')}},`,
    `  title   = {{${title}}},`,
    `  version = {${version}},`,
    '  note    = {Not released: name the commit, with its verification report},',
    '}',
  ].join('\n');
}

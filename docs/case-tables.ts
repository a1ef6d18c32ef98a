/**
 * Writes the field tables of docs/case.md from the table of the case: `npm run case-tables`. A table stands between
 * `<!-- fields of pipe -->` and `<!-- end -->`; several parts, and `cure` for what cures, may be named, and what is left out
 * by a first screening: `needed for numbers`, `needed to sign`.
 */
import { execFileSync } from 'node:child_process';
import { readFileSync, realpathSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type CaseField, caseFields } from '../src/json/index.js';

const page = fileURLToPath(new URL('case.md', import.meta.url));

const TABLE = /(?<=<!-- fields of (?<parts>[a-z, ]+) -->\n\n).*?(?=\n<!-- end -->)/gsu;

/** The page with its tables as they must be. */
export function withTables(text: string): string {
  const fields = caseFields();
  const input = text.replaceAll(TABLE, (...found) => {
    const { parts } = found.at(-1) as { readonly parts: string };
    return tableOf(parts.split(', ').flatMap((part) => rowsOf(part, fields)));
  });
  // biome sets the columns of a table as it does everywhere else.
  return execFileSync('node_modules/.bin/biome', ['format', '--stdin-file-path=docs/case.md'], {
    input,
    cwd: fileURLToPath(new URL('..', import.meta.url)),
    encoding: 'utf8',
  });
}

type Row = readonly string[];

function rowsOf(part: string, fields: readonly CaseField[]): Row[] {
  // What cures does so alike in laminate, filler and putty: one table serves them all.
  if (part === 'cure') return rowsBelow('laminate.cure', fields);
  if (part === 'case') return fields.filter(({ path }) => !/[.[]/u.test(path)).map((field) => rowOf(field.path, field));
  if (part.startsWith('needed ')) return rowsNeeded(part.slice('needed '.length), fields);
  return rowsBelow(part, fields).filter(([name]) => !/\bcure\./u.test(name ?? ''));
}

function rowsNeeded(needed: string, fields: readonly CaseField[]): Row[] {
  return fields.filter((field) => field.needed === needed).map((field) => rowOf(field.path, field));
}

function rowsBelow(path: string, fields: readonly CaseField[]): Row[] {
  return fields
    .filter((field) => field.path.startsWith(`${path}.`) || field.path.startsWith(`${path}[].`))
    .map((field) => rowOf(field.path.slice(path.length + 1).replace(/^\]\./u, ''), field));
}

function rowOf(name: string, { required, needed, when, expected, says, example }: CaseField): Row {
  const shown = typeof example === 'object' ? '' : `\`${JSON.stringify(example)}\``;
  const must = [required ? 'yes' : (needed ?? 'no'), ...(when === undefined ? [] : [when])].join(', ');
  return [`\`${name}\``, must, says, expected.replace(' as text with a unit', ''), shown];
}

function tableOf(rows: readonly Row[]): string {
  const head = ['field', 'must be there', 'what it is', 'takes', 'example'];
  const lines = [head, head.map(() => '---'), ...rows].map((row) => `| ${row.join(' | ')} |`);
  return `${lines.join('\n')}\n`;
}

if (process.argv[1] !== undefined && realpathSync(process.argv[1]) === fileURLToPath(import.meta.url)) {
  writeFileSync(page, withTables(readFileSync(page, 'utf8')));
}

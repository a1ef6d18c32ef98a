import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { posix } from 'node:path';
import { describe, expect, it } from 'vitest';

const [packed] = JSON.parse(
  execFileSync('npm', ['pack', '--dry-run', '--json', '--ignore-scripts'], {
    encoding: 'utf8',
    stdio: ['ignore', 'pipe', 'ignore'],
  }),
) as [{ files: { path: string }[] }];
const files = new Set(packed.files.map(({ path }) => path));
const pages = [...files].filter((path) => path.endsWith('.md'));

describe('the packed tarball', () => {
  it('holds the pages, the examples and the schema, and no script that only the repository needs', () => {
    for (const path of [
      'README.md',
      'docs/embedding.md',
      'docs/surveys.md',
      'docs/examples/survey.csv',
      'dist/LICENSES.txt',
      'dist/case.schema.json',
    ])
      expect(files, path).toContain(path);
    expect(
      [...files].filter(
        (path) => /^(?:docs\/.*\.(?:ts|json)|tests\/|src\/)/u.test(path) && !path.startsWith('docs/examples/'),
      ),
    ).toEqual([]);
  });

  it('has pages whose links lead to files that it holds', () => {
    const astray = pages.flatMap((page) =>
      [...readFileSync(page, 'utf8').matchAll(/\]\(([^)\s]+)\)/gu)].flatMap(([, link = '']) => {
        const target = posix.normalize(posix.join(posix.dirname(page), link.replace(/#.*$/u, ''))).replace(/\/$/u, '');
        const isInside =
          /^[a-z]+:/u.test(link) ||
          link.startsWith('#') ||
          [...files].some((path) => path === target || path.startsWith(`${target}/`));
        return isInside ? [] : [`${page}: ${link}${existsSync(target) ? '' : ' (nowhere)'}`];
      }),
    );
    expect(astray).toEqual([]);
  });
});

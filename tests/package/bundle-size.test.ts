import { readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { build, transform } from 'esbuild';
import { type Plugin, rollup } from 'rollup';
import { describe, expect, it } from 'vitest';
import { rooms } from '../../docs/contents.js';

/** What a program loads that uses one formula of the built package: bytes after gzip, bundled and minified. */

const root = new URL('../../', import.meta.url);
const manifest = JSON.parse(readFileSync(new URL('package.json', root), 'utf8'));
const [example = ''] = /(?<=```ts\n).*?(?=```)/su.exec(readFileSync(new URL('README.md', root), 'utf8')) ?? [];

const snippets = {
  'a formula alone': ["export { hoopStress } from 'hoopwright/pipe';", 1000],
  'the example of the README, with three kinds': [example, 1400],
} as const;

async function byEsbuild(contents: string): Promise<number> {
  const { outputFiles } = await build({
    stdin: { contents, resolveDir: root.pathname, loader: 'js' },
    bundle: true,
    minify: true,
    format: 'esm',
    platform: 'browser',
    write: false,
  });
  return gzipSync(outputFiles[0]?.contents ?? '').length;
}

/** Finds the entries by package.json, and takes its word that loading a file has no effect. */
const resolver = (contents: string): Plugin => ({
  name: 'the built package',
  resolveId(id, from) {
    if (from === undefined) return id;
    const path = id.startsWith('hoopwright') ? manifest.exports[id.replace('hoopwright', '.')].module : id;
    const { pathname } = new URL(path, from === 'snippet' ? root : `file://${from}`);
    return { id: pathname, moduleSideEffects: manifest.sideEffects };
  },
  load: (id) => (id === 'snippet' ? contents : null),
});

async function byRollup(contents: string): Promise<number> {
  const bundle = await rollup({ input: 'snippet', plugins: [resolver(contents)] });
  const { output } = await bundle.generate({ format: 'esm' });
  const { code } = await transform(output[0].code, { minify: true });
  return gzipSync(code).length;
}

describe.each(Object.entries(snippets))('%s', (_, [code, budget]) => {
  it.each([
    ['esbuild', byEsbuild],
    ['Rollup', byRollup],
  ] as const)(`bundled by %s stays under ${budget} bytes and holds the formula`, async (__, bundled) => {
    expect(code).toContain('hoopStress');
    const bytes = await bundled(code);
    expect(bytes).toBeGreaterThan(300);
    expect(bytes).toBeLessThanOrEqual(budget);
  });
});

describe('a room bundled as a whole', () => {
  it.each(Object.keys(rooms))('%s carries no declaration', async (room) => {
    const { outputFiles } = await build({
      stdin: { contents: `export * from 'hoopwright/${room}';`, resolveDir: root.pathname, loader: 'js' },
      bundle: true,
      format: 'esm',
      write: false,
    });
    const text = outputFiles[0]?.text ?? '';
    expect(text.length).toBeGreaterThan(300);
    expect(text).not.toMatch(/\bsample: |\bsources: /u);
  });
});

import { build } from 'esbuild';
import { describe, expect, it } from 'vitest';

/** What of the library ends up beside the timeline when a page takes it in. */
async function modulesWith(entry: string): Promise<string[]> {
  const { metafile } = await build({
    entryPoints: [entry],
    bundle: true,
    format: 'esm',
    minify: true,
    write: false,
    metafile: true,
    treeShaking: true,
  });
  const [output] = Object.values(metafile.outputs);
  return Object.entries(output?.inputs ?? {})
    .filter(([, { bytesInOutput }]) => bytesInOutput > 0)
    .map(([file]) => file);
}

describe('the timeline on its own', () => {
  it('brings cure formulas and clock arithmetic along, and no text of the plan', async () => {
    const modules = await modulesWith('src/repair/timeline/timeline.ts');
    const rooms = new Set(modules.map((file) => file.split('/').slice(0, 2).join('/')));
    expect([...rooms].sort()).toEqual([
      'src/cure',
      'src/formula',
      'src/mechanics',
      'src/numeric',
      'src/quantity',
      'src/repair',
      'src/site',
    ]);
    expect(modules.filter((file) => file.startsWith('src/repair/')).sort()).toEqual([
      'src/repair/timeline/cure-law.ts',
      'src/repair/timeline/duration.ts',
      'src/repair/timeline/timeline.ts',
    ]);
    expect(modules.length).toBeLessThan(25);
  });
});

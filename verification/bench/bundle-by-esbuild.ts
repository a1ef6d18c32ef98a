import { fileURLToPath } from 'node:url';
import { build, type Plugin } from 'esbuild';
import { type Bundler, codeOf, type Page } from './bundle.js';

const folder = fileURLToPath(new URL('../../', import.meta.url));

/** All pages in one go: nothing is split off, so that each comes out as if it were alone. */
export const byEsbuild: Bundler = async (pages) => {
  const { outputFiles, metafile } = await build({
    entryPoints: pages.map((_, index) => ({ in: `page:${index}`, out: String(index) })),
    plugins: [inMemory(pages)],
    absWorkingDir: folder,
    bundle: true,
    minify: true,
    format: 'esm',
    platform: 'browser',
    outdir: 'out',
    write: false,
    metafile: true,
    logLevel: 'silent',
  });
  return Object.entries(metafile.outputs).map(([path, { inputs }], index) => {
    const file = outputFiles[index];
    if (path !== `out/${index}.js` || file === undefined) throw new Error(`esbuild wrote ${path} as its file ${index}`);
    const kept = Object.entries(inputs).filter(([, { bytesInOutput }]) => bytesInOutput > 0);
    const packages = kept.flatMap(([input]) => /node_modules\/([^/]+)/u.exec(input)?.[1] ?? []);
    return { minified: file.text, packages: [...new Set(packages)] };
  });
};

function inMemory(pages: readonly Page[]): Plugin {
  return {
    name: 'pages',
    setup: ({ onResolve, onLoad }) => {
      onResolve({ filter: /^page:/ }, ({ path }) => ({ path, namespace: 'pages' }));
      onLoad({ filter: /^page:/, namespace: 'pages' }, ({ path }) => ({
        contents: codeOf(pages[Number(path.slice('page:'.length))] as Page),
        resolveDir: folder,
      }));
    },
  };
}

import { fileURLToPath } from 'node:url';
import { buildSync } from 'esbuild';
import { runSite } from './page.js';

/** The one script of the site, bundled, in a form that a page on disk may load. */
export function siteScript(): string {
  const { outputFiles } = buildSync({
    stdin: {
      contents: `import { ${runSite.name} } from './page.ts'; ${runSite.name}(window);`,
      resolveDir: fileURLToPath(new URL('.', import.meta.url)),
      loader: 'ts',
    },
    bundle: true,
    minify: true,
    format: 'iife',
    target: 'es2022',
    charset: 'ascii',
    write: false,
  });
  const [file] = outputFiles;
  if (file === undefined) throw new Error('esbuild gave no script');
  return file.text;
}

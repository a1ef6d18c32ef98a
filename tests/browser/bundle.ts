import { build } from 'esbuild';

/** One script for a page, from code that imports from the built package by its name and from files of these tests. */
export async function bundleForPage(code: string): Promise<string> {
  const result = await build({
    stdin: { contents: code, resolveDir: import.meta.dirname, loader: 'js' },
    bundle: true,
    minify: true,
    format: 'iife',
    platform: 'browser',
    write: false,
    logLevel: 'silent',
  });
  return result.outputFiles[0]?.text ?? '';
}

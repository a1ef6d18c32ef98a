import { gzipSync } from 'node:zlib';
import { build } from 'esbuild';

export interface BundleSize {
  readonly bytes: number;
  /** Packages that ended up inside. */
  readonly packages: readonly string[];
}

/** What a browser would load, minified and gzipped, for code that imports from the built package. */
export async function bundleSize(code: string): Promise<BundleSize> {
  const result = await build({
    stdin: { contents: code, resolveDir: process.cwd(), loader: 'js' },
    bundle: true,
    minify: true,
    format: 'esm',
    platform: 'browser',
    write: false,
    metafile: true,
    logLevel: 'silent',
  });
  const packages = Object.values(result.metafile.outputs)
    .flatMap((output) => Object.entries(output.inputs))
    .filter(([path, { bytesInOutput }]) => path.includes('node_modules/') && bytesInOutput > 0)
    .map(([path]) => path.split('node_modules/').at(-1)?.split('/')[0] ?? path);
  return {
    bytes: gzipSync(result.outputFiles[0]?.contents ?? new Uint8Array()).length,
    packages: [...new Set(packages)],
  };
}

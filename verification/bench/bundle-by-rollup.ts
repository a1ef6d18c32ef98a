import { readFileSync } from 'node:fs';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { transform } from 'esbuild';
import { type Plugin, rollup } from 'rollup';
import { entryFile } from './built.js';
import { type Bundle, type Bundler, codeOf, type Page } from './bundle.js';

const texts = new Map<string, string>();

/** The file that defines each exported name, as rollup has read them; several where a name is not unique. */
const homes = new Map<string, Set<string>>();

/**
 * One page after the other. A name whose home is known from an earlier page is imported from there: the package has no
 * side effects, so that what stands on the way is dropped anyway, and reading all of it takes a second each time.
 * Rollup does not minify; esbuild does it for both.
 */
export const byRollup: Bundler = async (pages) => {
  const bundles: Bundle[] = [];
  for (const page of pages) bundles.push(await bundleOf(codeFromHome(page)));
  return bundles;
};

async function bundleOf(code: string): Promise<Bundle> {
  const bundle = await rollup({
    input: 'page',
    plugins: [packageFiles(code)],
    treeshake: { moduleSideEffects: false },
  });
  const { output } = await bundle.generate({ format: 'es' });
  await bundle.close();
  const { code: minified } = await transform(output[0].code, { minify: true, format: 'esm' });
  return { minified, packages: output[0].imports };
}

function codeFromHome(page: Page): string {
  const [home, ...others] = homes.get(page.name) ?? [];
  if (home === undefined || others.length > 0) return codeOf(page);
  return `export { ${page.name} } from ${JSON.stringify(home)};`;
}

/** Finds the entries of this package by its own name, as an installed bundler would, and keeps what was read. */
function packageFiles(code: string): Plugin {
  return {
    name: 'package-files',
    resolveId: (id, from) => {
      if (id === 'page' || id.startsWith('/')) return id;
      if (/^hoopwright(?:\/|$)/u.test(id)) {
        return fileURLToPath(entryFile(id.replace('hoopwright', '.'), ['module', 'import', 'default']));
      }
      return id.startsWith('.') && from !== undefined ? fileURLToPath(new URL(id, pathToFileURL(from))) : false;
    },
    load: (id) => {
      if (id === 'page') return code;
      const text = texts.get(id) ?? readFileSync(id, 'utf8');
      texts.set(id, text);
      return text;
    },
    moduleParsed: ({ id, exportedBindings, ast }) => {
      if (id === 'page') return;
      const imports = ast?.body.flatMap((each) => (each.type === 'ImportDeclaration' ? each.specifiers : [])) ?? [];
      const passedOn = new Set(imports.map(({ local }) => local.name));
      for (const name of exportedBindings?.['.'] ?? []) {
        if (!passedOn.has(name)) homes.set(name, (homes.get(name) ?? new Set()).add(id));
      }
    },
  };
}

import { fileURLToPath } from 'node:url';
import type { TypeDocOptions } from 'typedoc';
import { texMath } from '../markdown.js';

const root = (path: string): string => fileURLToPath(new URL(`../../../${path}`, import.meta.url));

/** What typedoc is asked for: every entry of the package, as its doc comments say it. */
export const options: Partial<TypeDocOptions> = {
  entryPoints: [root('src/*.ts')],
  exclude: [root('src/cli.ts')],
  tsconfig: root('tsconfig.json'),
  name: 'hoopwright: types and functions',
  readme: 'none',
  excludeInternal: true,
  disableSources: true,
  hideGenerator: true,
  githubPages: false,
  includeVersion: true,
  navigationLinks: { Documentation: '../index.html' },
  validation: { notExported: true, invalidLink: true, notDocumented: false },
  // Machinery of types that a reader never names: what it makes of a case stands on the page that uses it.
  intentionallyNotExported: ['TextOf', 'CaseDocument', 'MayBeLeftOut', 'Held', 'DeclaredKind'],
  markdownItLoader: (parser: MarkdownIt) => {
    parser.inline.ruler.before('escape', 'tex', tex);
  },
};

/** The parser that typedoc brings, as far as a rule touches it. */
interface MarkdownIt {
  readonly inline: { readonly ruler: { before(rule: string, name: string, own: typeof tex): void } };
}

interface InlineState {
  readonly src: string;
  pos: number;
  push(type: string, tag: string, nesting: 0): { content: string };
}

/** TeX between dollars, in front of the rule that would take its backslashes for escapes. */
function tex(state: InlineState, silent: boolean): boolean {
  const found = /^(?:\$\$(?<displayed>[^$]+)\$\$|\$(?<inlined>[^\s$](?:[^$\n]*[^\s$])?)\$(?!\d))/u.exec(
    state.src.slice(state.pos),
  );
  if (found === null) return false;
  if (!silent) {
    const { displayed, inlined = '' } = found.groups ?? {};
    state.push('html_inline', '', 0).content = texMath(displayed ?? inlined, displayed !== undefined);
  }
  state.pos += found[0].length;
  return true;
}

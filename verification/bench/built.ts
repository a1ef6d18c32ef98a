import { readFileSync } from 'node:fs';

const root = new URL('../../', import.meta.url);

/** What an entry of the package leads to, by the condition that asks. */
type Target = string | { readonly [condition: string]: Target };

const { exports: declared } = JSON.parse(readFileSync(new URL('package.json', root), 'utf8')) as {
  exports: Readonly<Record<string, Target>>;
};

/** The built file that `import` of an entry loads in Node, as an address. Users run this, not the source. */
export function entryFile(entry: string): string {
  let target = declared[entry];
  while (typeof target === 'object') target = target['import'] ?? target['default'];
  if (target === undefined) throw new Error(`package.json exports no ${entry} for import`);
  return new URL(target, root).href;
}

import { readFileSync } from 'node:fs';

/** The built package, which is what users run. Loaded by address, since the types are those of the source. */
const root = new URL('../../', import.meta.url);

/** What an entry of the package leads to, by the condition that asks. */
type Target = string | { readonly [condition: string]: Target };

const { exports: declared } = JSON.parse(readFileSync(new URL('package.json', root), 'utf8')) as {
  exports: Readonly<Record<string, Target>>;
};

/** The entries of the package that hold code: `.`, `./json` and the others. */
export const entries: readonly string[] = Object.keys(declared).filter((entry) => !entry.endsWith('.json'));

/** The built file that an entry leads to, as an address; by default the one that `import` loads in Node. */
export function entryFile(entry: string, conditions: readonly string[] = ['import', 'default']): string {
  let target = declared[entry];
  while (typeof target === 'object') {
    const choices: Readonly<Record<string, Target>> = target;
    target = choices[Object.keys(choices).find((condition) => conditions.includes(condition)) ?? ''];
  }
  if (target === undefined) throw new Error(`package.json exports no ${entry} for ${conditions.join(', ')}`);
  return new URL(target, root).href;
}

export const built: {
  readonly root: typeof import('../../src/index.js');
  readonly json: typeof import('../../src/json.js');
  readonly formulas: typeof import('../../src/formulas.js');
} = {
  root: await import(entryFile('.')),
  json: await import(entryFile('./json')),
  formulas: await import(entryFile('./formulas')),
};

interface Exported {
  readonly name: string;
  readonly entry: string;
  readonly compute: unknown;
}

/** Every function that the package exports, with the entry that it is nearest to: a room rather than the root. */
export const functions: ReadonlyMap<unknown, Exported> = new Map(
  (
    await Promise.all(
      // The root comes first, so that a room that exports the same takes its place.
      [...entries].sort().map(async (entry) => {
        const members: Readonly<Record<string, unknown>> = await import(entryFile(entry));
        return Object.entries(members).map(([name, compute]) => [compute, { name, entry, compute }] as const);
      }),
    )
  )
    .flat()
    .filter(([compute]) => typeof compute === 'function'),
);

/** Where users import the function of a formula from: two rooms may each have one of the same name. */
export function exportOf(id: string): Exported {
  const found = functions.get(built.formulas.formulas.find((each) => each.id === id)?.compute);
  if (found === undefined) throw new Error(`no entry of the package exports the function of ${id}`);
  return found;
}

/** The function of a formula as users import it: `formulaById(id).compute` asks for misspelt inputs besides. */
export function functionOf(id: string): (input: unknown) => unknown {
  return exportOf(id).compute as (input: unknown) => unknown;
}

import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import {
  type AnyFormula,
  type InputDeclaration,
  type OutputDeclaration,
  sources,
  sourceTags,
} from '../../src/formula/index.js';
import { formulaById, formulaOf, formulas } from '../../src/registry/index.js';
import { reservedNames, undeclaredSymbols } from '../../verification/oracles/equation.js';

const at = (path: string): URL => new URL(`../../${path}`, import.meta.url);

interface File {
  /** The folder that it stands in: `src/wrap`, or `src/pipe/stress`. */
  readonly folder: string;
  readonly name: string;
  readonly text: string;
}

/** The files of a folder and below with their text, the indexes left out. */
function filesOf(folder: string): File[] {
  return readdirSync(at(folder), { withFileTypes: true }).flatMap((entry) => {
    if (entry.isDirectory()) return filesOf(`${folder}/${entry.name}`);
    if (!entry.name.endsWith('.ts') || entry.name === 'index.ts') return [];
    const text = readFileSync(at(`${folder}/${entry.name}`), 'utf8');
    return [{ folder, name: entry.name.replace(/\.ts$/u, ''), text }];
  });
}

/** The folders from a room down to one of its own. */
const pathOf = (folder: string): string[] => {
  const parts = folder.split('/');
  return parts.slice(2).map((_, depth) => parts.slice(0, depth + 3).join('/'));
};
const camel = (words: string): string => words.replace(/-(\w)/gu, (_, letter: string) => letter.toUpperCase());
const lastOf = (id: string): string => id.split('/').at(-1) ?? '';

const rooms = ['mechanics', 'pipe', 'laminate', 'wrap', 'resin', 'cure', 'site', 'seal', 'acceptance'];
const idsIn = (text: string): string[] => [...text.matchAll(/^ {2}id: '(.+)',$/gmu)].map((match) => match[1] ?? '');
const files = rooms.flatMap((room) => filesOf(`src/${room}`).map((file) => ({ ...file, room, ids: idsIn(file.text) })));
const oracles = filesOf('verification/derivations').map(({ text }) => text);

const inputsOf = (formula: AnyFormula): [string, InputDeclaration][] => Object.entries(formula.inputs);
/** One output, or the members of a record. */
function outputsOf({ output }: AnyFormula): OutputDeclaration[] {
  return typeof output.symbol === 'string'
    ? [output as OutputDeclaration]
    : Object.values(output as Record<string, OutputDeclaration>);
}

describe('the rooms', () => {
  const lines = new Map<string, string[]>();
  const lists = (folder: string, line: string): boolean => {
    if (!lines.has(folder)) lines.set(folder, readFileSync(at(`${folder}/index.ts`), 'utf8').split('\n'));
    return lines.get(folder)?.includes(line) ?? false;
  };

  it('list every file that declares a formula in the index of its folder, and every folder in the one above', () => {
    const wanted = files.flatMap(({ folder, name, ids }) => {
      if (ids.length === 0) return [];
      const above = pathOf(folder).map((path) => {
        const [parent, own] = [path.replace(/\/[^/]+$/u, ''), path.split('/').at(-1)];
        return [parent, `export * from './${own}/index.js';`] as const;
      });
      return [[folder, `export * from './${name}.js';`] as const, ...above];
    });
    const hidden = wanted.filter(([folder, line]) => !lists(folder, line));
    expect([...new Set(hidden.map(([folder, line]) => `${folder}/index.ts lacks ${line}`))]).toEqual([]);
  });

  it('give every formula an id that names its room and its file', () => {
    const strays = files.flatMap(({ room, folder, name, ids }) =>
      ids.length === 0 || ids.includes(`${room}/${name}`) ? [] : [`${folder}/${name}.ts declares ${ids.join(', ')}`],
    );
    expect(strays).toEqual([]);
    const declared = new Map(files.flatMap(({ room, ids }) => ids.map((id) => [id, room] as const)));
    const lost = formulas.filter(({ id }) => declared.get(id) !== id.split('/')[0]);
    expect(lost.map(({ id }) => id)).toEqual([]);
  });

  it('declare as many formulas as the registry lists', () => {
    const registered = new Set(formulas.map(({ id }) => id));
    expect(files.flatMap(({ ids }) => ids).filter((id) => !registered.has(id))).toEqual([]);
  });
});

describe('the names', () => {
  it('of a function and of its declaration are those of the id', () => {
    const functions = formulas.map(({ id, compute }) => [id, compute.name]);
    expect(functions).toEqual(formulas.map(({ id }) => [id, camel(lastOf(id))]));
    const declared = files.flatMap(({ text, ids }) => {
      const names = [...text.matchAll(/^export const (\w+)Formula = /gmu)].map(([, name]) => name);
      return names.length === ids.length ? ids.map((id, place) => [id, names[place]]) : [[ids.join(), names.join()]];
    });
    expect(declared).toEqual(declared.map(([id = '']) => [id, camel(lastOf(id))]));
  });

  it('of predicates begin with that of a formula which asks them', () => {
    // One question about the maker's data, which five cure times ask.
    const shared = new Set(['activationEnergyMissing']);
    const askers = new Map<string, string[]>();
    for (const { compute, limits } of formulas)
      for (const { beyond } of limits)
        if (beyond !== undefined) askers.set(beyond.name, [...(askers.get(beyond.name) ?? []), compute.name]);
    expect(askers.size).toBeGreaterThan(40);
    const strays = [...askers].filter(
      ([name, functions]) => !shared.has(name) && !functions.some((each) => name.startsWith(each)),
    );
    expect(strays).toEqual([]);
  });
});

describe('the registry', () => {
  it('has no id and no title twice', () => {
    expect(new Set(formulas.map(({ id }) => id)).size).toBe(formulas.length);
    const titles = formulas.map(({ title }) => title);
    expect(titles.filter((title, index) => titles.indexOf(title) !== index)).toEqual([]);
  });

  it('finds a formula by its id and by its function', () => {
    for (const formula of formulas) {
      const { compute, ...stated } = formulaById(formula.id) ?? formula;
      expect({ ...stated, compute: formula.compute }).toEqual(formula);
      expect(compute.name).toBe(formula.compute.name);
      expect(formulaOf(formula.compute)).toBe(formula);
    }
    expect(formulaById('pipe/none')).toBeUndefined();
    expect(formulaOf(Math.sqrt)).toBeUndefined();
  });
});

describe.each(formulas.map((formula) => [formula.id, formula] as const))('the declaration of %s', (id, formula) => {
  it('names every input with a symbol, and gives what is needed to draw it', () => {
    const faults = inputsOf(formula).flatMap(([name, { symbol, kind, name: words, sample, choices, columns }]) => {
      const sort = kind as string;
      const drawable =
        {
          choice: (choices?.length ?? 0) > 1,
          flag: true,
          list: Object.keys(columns ?? {}).length > 0,
        }[sort] ??
        (sample !== undefined && sample[0] < sample[1]);
      return [
        ...(symbol === '' || words === '' ? [`${name} has no symbol or no name`] : []),
        ...(drawable
          ? []
          : [`${name} is a ${sort} without ${{ choice: 'choices', list: 'columns' }[sort] ?? 'sample: [low, high]'}`]),
      ];
    });
    expect(faults).toEqual([]);
  });

  it('has no symbol twice, and none that mathjs reads as something else', () => {
    const { equation } = formula;
    const where = 'where' in equation && equation.where !== undefined ? equation.where : [];
    const symbols = [...inputsOf(formula).map(([, { symbol }]) => symbol), ...where.map(({ symbol }) => symbol)];
    expect(symbols.filter((symbol, index) => symbols.indexOf(symbol) !== index)).toEqual([]);
    const outputs = outputsOf(formula).map(({ symbol }) => symbol);
    expect(outputs.filter((symbol, index) => outputs.indexOf(symbol) !== index)).toEqual([]);
    expect([...symbols, ...outputs].filter((symbol) => !/^[A-Za-z][A-Za-z0-9_]*$/u.test(symbol))).toEqual([]);
    expect([...symbols, ...outputs].filter((symbol) => reservedNames.has(symbol) || symbol === 'pi')).toEqual([]);
  });

  it('reads only declared symbols in its equation', () => {
    expect(undeclaredSymbols(formula)).toEqual([]);
  });

  it('has an oracle that names it, if it is an algorithm', () => {
    if (!('algorithm' in formula.equation)) return;
    const named = oracles.some((text) => new RegExp(`${id}(?![\\w-])`, 'u').test(text));
    expect(named, `no test in verification/derivations/ names '${id}'`).toBe(true);
  });

  it('says where it comes from, and claims no more than its sources bear', () => {
    const keys = formula.sources.map(({ key }) => key);
    expect(keys.filter((key) => !Object.hasOwn(sources, key))).toEqual([]);
    expect(formula.sources.filter(({ locator }) => locator === '')).toEqual([]);
    const { form } = formula.evidence;
    for (const { tag } of Object.values(formula.evidence)) expect(sourceTags).toContain(tag);
    if (form.tag === 'practice' || form.tag === 'chosen') return;
    expect(keys.length, `form is ${form.tag}, but no source is named`).toBeGreaterThan(0);
    if (form.tag === 'published') {
      expect(
        keys.map((key) => sources[key].reached),
        'form is published, but no named source was read in its own text',
      ).toContain('published');
    }
  });

  it('warns by a predicate at every limit that does not stop', () => {
    expect(
      formula.limits.filter(({ sort, beyond }) => sort === 'note' && beyond === undefined).map(({ text }) => text),
    ).toEqual([]);
  });
});

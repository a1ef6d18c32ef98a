import type { AnyFormula } from '../formula/index.js';
import { formulas } from '../registry/index.js';

/**
 * The formulas whose id, title, search terms or inputs hold every word of a text: `barlow`, `dew point`; all of them for none.
 *
 * @param words what to look for, in any order
 */
export function findFormulas(words: string): AnyFormula[] {
  const wanted = words
    .toLowerCase()
    .split(/\s+/u)
    .filter((word) => word !== '');
  return formulas.filter((formula) => {
    const texts = textsOf(formula);
    return wanted.every((word) => texts.some((text) => text.includes(word)));
  });
}

function textsOf({ id, title, search = [], inputs }: AnyFormula): string[] {
  const names = Object.entries(inputs as Readonly<Record<string, { name: string }>>);
  return [id, title, ...search, ...names.flatMap(([key, { name }]) => [key, name])].map((text) => text.toLowerCase());
}

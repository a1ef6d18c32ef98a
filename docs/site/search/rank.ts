/** What a search finds, and in which order: the same words in the page and in the tests. */

export interface Entry {
  readonly title: string;
  /** Where it stands in the site. */
  readonly place: string;
  /** What it is: a formula, a page, a field of a case, a symbol of the interface. */
  readonly sort: string;
  /** Words that lead to it as surely as its title: terms of the trade, its id. */
  readonly terms: readonly string[];
  /** What it says. */
  readonly text: string;
}

const wordsOf = (text: string): string[] =>
  text
    .toLowerCase()
    .normalize('NFKD')
    .replaceAll(/\p{M}/gu, '')
    .split(/[^\p{L}\p{N}.]+/u)
    .map((word) => word.replaceAll(/^\.+|\.+$/gu, ''))
    .filter((word) => word !== '');

/** A word meets one that it begins, or whose ending alone it goes beyond: `wraps` and `wrap`. */
function meets(asked: string, word: string): number {
  if (word === asked) return 1;
  if (word.startsWith(asked) && asked.length > 1) return 0.6;
  const ending = asked.length - word.length;
  return word.length > 3 && ending > 0 && ending < 3 && asked.startsWith(word) ? 0.6 : 0;
}

const best = (asked: string, words: readonly string[]): number =>
  Math.max(0, ...words.map((word) => meets(asked, word)));

/** How well each kind of text answers, against the text of a page. */
const WEIGHT = { title: 10, terms: 9, text: 2 };

/** A formula answers before a field or a symbol of the same words. */
const SORTS: Readonly<Record<string, number>> = { formula: 3, page: 2.5, section: 1, field: 1, unit: 1 };

function scoreOf(asked: readonly string[], phrase: string, entry: Entry): number {
  const title = wordsOf(entry.title);
  const terms = entry.terms.flatMap(wordsOf);
  const text = wordsOf(entry.text);
  let score = SORTS[entry.sort] ?? 0;
  for (const word of asked) {
    const found = Math.max(
      WEIGHT.title * best(word, title),
      WEIGHT.terms * best(word, terms),
      WEIGHT.text * best(word, text),
    );
    if (found === 0) return 0;
    score += found;
  }
  const heads = [title.join(' '), ...entry.terms.map((term) => wordsOf(term).join(' '))];
  if (heads.some((head) => head === phrase)) score += 12;
  else if (heads.some((head) => head.includes(phrase))) score += 5;
  // Of two alike the shorter title is the more to the point.
  return score - title.length / 20;
}

/** The entries that hold every word of a text, the best first. */
export function search(entries: readonly Entry[], query: string): Entry[] {
  const asked = wordsOf(query);
  if (asked.length === 0) return [];
  const phrase = asked.join(' ');
  return entries
    .map((entry) => ({ entry, score: scoreOf(asked, phrase, entry) }))
    .filter(({ score }) => score > 0)
    .sort((a, b) => b.score - a.score)
    .map(({ entry }) => entry);
}

/**
 * The facts of the report in Markdown: verdicts, counts, values, tags and equations, each by where it stands. Its words are
 * left out, so that a sentence may be put better without a new run.
 */

/** A fact by its place: the anchor above it, the row and the column. */
export type Facts = ReadonlyMap<string, string>;

/** Columns that hold words. */
const WORDS = new Set(['meaning', 'explanation', 'problem', 'about', 'tests', 'property', 'file', 'code', 'because']);

/** Columns of which only the part before this is a fact: the rest says why, or where. */
const CUT: Readonly<Record<string, RegExp>> = {
  '': /: /u,
  'primary publication': /(?<=\*\*) /u,
  verdict: / \(/u,
  'verdict and reason': /: /u,
  'smallest change seen': / \(/u,
  source: /[,:]/u,
  reason: /^/u,
  tag: /: /u,
};

const TAGS = /\b(?:published|secondary|recalled|practice|chosen|derived)\b/gu;
/** Numbers that stand alone: neither in a name such as B31G nor in a date or a range that is joined by a hyphen. */
const NUMBERS = /(?<![\p{L}\d.-])\d+(?:[.,]\d+)*(?:e[-+]?\d+)?(?![\p{L}\d-])/gu;

const all = (text: string, what: RegExp): string => [...text.matchAll(what)].map(([found]) => found).join(' ');

/** What a line of text says in numbers, or in tags, or as it stands where it lists evidence. */
function factOf(line: string): string {
  if (line.startsWith('- **Source:')) return '';
  if (line.startsWith('- **Independent lines:')) return line;
  if (line.startsWith('- **Evidence:')) return all(line.replaceAll(/\([^)]*\)/gu, ''), TAGS);
  return all(line, NUMBERS);
}

/** However the table is set: a formatter may pad its cells. */
const cellsOf = (line: string): string[] =>
  line
    .slice(1, -1)
    .split(/(?<= )\|(?= )/u)
    .map((cell) => withoutAnchor(cell.trim()));
/** A cell without the anchor that it carries. */
const withoutAnchor = (cell: string): string => cell.replace(/^<a id="[^"]+"><\/a>/u, '');
const isRule = (line: string | undefined): boolean => /^\| :?-/u.test(line ?? '');

export function factsOf(markdown: string): Facts {
  const facts = new Map<string, string>();
  const seen = new Map<string, number>();
  let place = '';
  const put = (what: string, fact: string): void => {
    if (fact.trim() === '') return;
    const key = `${place} ${what}`;
    const times = (seen.get(key) ?? 0) + 1;
    seen.set(key, times);
    facts.set(times === 1 ? key : `${key} (${times})`, fact);
  };
  const lines = markdown.split('\n');
  let head: readonly string[] = [];
  let fence = '';
  lines.forEach((line, index) => {
    if (line.startsWith('```')) fence = fence === '' ? line.slice(3) || 'text' : '';
    else if (fence === 'math') put('equation', line);
    else if (fence !== '' || line === '') return;
    else if (line.startsWith('<a id=')) place = line.split('"')[1] ?? '';
    else if (line.startsWith('#') || isRule(line)) return;
    else if (!line.startsWith('| ')) put(line.startsWith('- **Accuracy:') ? 'accuracy' : 'text', factOf(line));
    else if (isRule(lines[index + 1])) head = cellsOf(line);
    else {
      const cells = cellsOf(line).map((cell, column) => {
        const name = head[column] ?? '';
        const cut = CUT[name];
        return WORDS.has(name) ? '' : cut === undefined ? cell : (cell.split(cut)[0] ?? '');
      });
      const row = cells.find((cell) => cell !== '') ?? '';
      cells.forEach((cell, column) => {
        put(`${row}, ${head[column]}`, cell);
      });
    }
  });
  return facts;
}

/** The headings of the second level by their anchors, with the facts below each. */
export function factsBySection(markdown: string): Map<string, Facts> {
  const parts = markdown.split(/^(?=<a id="[^"]+"><\/a>\n\n## )/mu);
  return new Map(parts.map((part) => [/^<a id="(?<id>[^"]+)"/u.exec(part)?.groups?.['id'] ?? '', factsOf(part)]));
}

/** What differs, in words that name the place, the old fact and the new. */
export function changes(before: Facts, after: Facts): string[] {
  const places = new Set([...before.keys(), ...after.keys()]);
  return [...places].flatMap((place) => {
    const [old = 'nothing', now = 'nothing'] = [before.get(place), after.get(place)];
    return old === now ? [] : [`${place}: ${old} -> ${now}`];
  });
}

/** A key that stands twice in one object of a JSON text: the parser would keep the last and drop the first in silence. */
export interface DuplicateKey {
  readonly key: string;
  /** Line of the second one, from 1. */
  readonly line: number;
}

/**
 * The keys that stand twice in one object of a text that is already known to be JSON. Read character by character: a
 * pattern would keep a state for each of a million escapes.
 */
export function duplicateKeys(json: string): DuplicateKey[] {
  const found: DuplicateKey[] = [];
  const open: (Set<string> | 'list')[] = [];
  let line = 1;
  let last: readonly [from: number, to: number] = [0, 0];
  for (let at = 0; at < json.length; at++) {
    const character = json[at];
    if (character === '"') {
      const to = endOfText(json, at);
      last = [at, to];
      at = to - 1;
    } else if (character === '\n') line++;
    else if (character === '{') open.push(new Set());
    else if (character === '[') open.push('list');
    else if (character === '}' || character === ']') open.pop();
    else if (character === ':') {
      const keys = open.at(-1);
      const key: string = JSON.parse(json.slice(...last));
      if (keys instanceof Set && keys.has(key)) found.push({ key, line });
      else if (keys instanceof Set) keys.add(key);
    }
  }
  return found;
}

/** Behind the closing quote of a text that opens at `from`. */
function endOfText(json: string, from: number): number {
  let at = from + 1;
  while (at < json.length && json[at] !== '"') at += json[at] === '\\' ? 2 : 1;
  return at + 1;
}

/** A key that stands twice in one object of a JSON text: the parser would keep the last and drop the first in silence. */
export interface DuplicateKey {
  readonly key: string;
  /** Line of the second one, from 1. */
  readonly line: number;
}

const TOKEN = /"[^"\\]*(?:\\.[^"\\]*)*"|[{}[\],:]|\n/gu;

/** The keys that stand twice in one object of a text that is already known to be JSON. */
export function duplicateKeys(json: string): DuplicateKey[] {
  const found: DuplicateKey[] = [];
  const open: (Set<string> | 'list')[] = [];
  let line = 1;
  let last = '';
  for (const [token] of json.matchAll(TOKEN)) {
    if (token === '\n') line++;
    else if (token === '{') open.push(new Set());
    else if (token === '[') open.push('list');
    else if (token === '}' || token === ']') open.pop();
    else if (token === ':') {
      const keys = open.at(-1);
      const key: string = JSON.parse(last);
      if (keys instanceof Set && keys.has(key)) found.push({ key, line });
      else if (keys instanceof Set) keys.add(key);
    } else if (token.startsWith('"')) last = token;
  }
  return found;
}

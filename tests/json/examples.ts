import { readdirSync, readFileSync } from 'node:fs';

const folder = new URL('../../docs/examples/', import.meta.url);

/** The names of the example cases. */
export const exampleNames: readonly string[] = readdirSync(folder).filter((name) => name.endsWith('.json'));

const texts = new Map<string, string>();

/** The text of an example case, read once. */
export function exampleText(name: string): string {
  const text = texts.get(name) ?? readFileSync(new URL(name, folder), 'utf8');
  texts.set(name, text);
  return text;
}

/** An example case as a document that a test may change. */
// biome-ignore lint/suspicious/noExplicitAny: tests break documents on purpose, also in ways that no type allows.
export function exampleDocument(name = 'cooling-water-leak.json'): any {
  return JSON.parse(exampleText(name));
}

import { byId, options } from './dom.js';
import { examples } from './examples.js';

/** The ways to begin: an example, an empty form, a file. `take` is given a text, `start` a document. */
export function watchStart(start: (document: unknown) => void, take: (text: string) => void): void {
  const example = byId<HTMLSelectElement>('example');
  const titles = examples.map(({ title }) => title);
  example.append(...options(undefined, titles, ''));
  byId('take-example').addEventListener('click', () => {
    const chosen = examples.find(({ title }) => title === example.value);
    if (chosen !== undefined) start(structuredClone(chosen));
  });
  byId('clear').addEventListener('click', () => start({}));
  byId<HTMLInputElement>('file').addEventListener('change', async ({ target }) => {
    const file = (target as HTMLInputElement).files?.[0];
    if (file !== undefined) take(await file.text());
  });
}

import { readFileSync } from 'node:fs';
import { exampleNames, exampleText } from '../json/examples.js';

/** What stands between fences on a page, in the order of the page. */
export interface Fence {
  readonly language: string;
  readonly text: string;
  /** The paragraph in front of it. */
  readonly before: string;
}

export function fencesOf(page: string): Fence[] {
  const text = readFileSync(`docs/${page}`, 'utf8');
  return [...text.matchAll(/^```(?<language>[a-z]+)\n(?<text>.*?)^```$/gmsu)].map(({ groups, index }) => ({
    language: groups?.['language'] ?? '',
    text: groups?.['text'] ?? '',
    before: text.slice(0, index).trimEnd().split('\n\n').at(-1) ?? '',
  }));
}

/** The words of a command as a shell would split them; the pages use double quotes only. */
export function wordsOf(command: string): string[] {
  return [...command.matchAll(/(?:[^\s"]|"[^"]*")+/gu)].map(([word]) => word.replaceAll('"', ''));
}

/** The files of the repository that the commands of a page may read. */
export function exampleFiles(): Record<string, string> {
  const names = [...exampleNames, 'survey.csv'];
  return Object.fromEntries(names.map((name) => [`docs/examples/${name}`, exampleText(name)]));
}

/** The lines that a page quotes of an answer stand in it, in their order; `...` stands for what is left out. */
export function quotes(answer: string, quoted: string): boolean {
  const lines = answer.split('\n');
  let at = 0;
  for (const part of quoted.trimEnd().split(/^\.\.\.$/mu)) {
    const wanted = part.split('\n').filter((line, index, all) => line !== '' || (index > 0 && index < all.length - 1));
    const found = lines.findIndex(
      (_, from) => from >= at && wanted.every((line, index) => lines[from + index] === line),
    );
    if (found < 0) return false;
    at = found + wanted.length;
  }
  return true;
}

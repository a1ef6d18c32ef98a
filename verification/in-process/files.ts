import { readdirSync } from 'node:fs';
import { join, relative } from 'node:path';

export const root = join(import.meta.dirname, '../..');

/** Files of a folder and below, by their ending. */
export function filesIn(folder: string, ending: string): string[] {
  return readdirSync(join(root, folder), { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith(ending))
    .map((entry) => relative(root, join(entry.parentPath, entry.name)))
    .sort();
}

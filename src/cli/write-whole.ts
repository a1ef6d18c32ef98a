// Node loads the promises of its files when they are asked for, and most commands write none.
import { promises } from 'node:fs';
import { basename, dirname, join, resolve } from 'node:path';

/** What stands at a path. */
export type At = 'file' | 'folder' | 'nothing';

/**
 * Writes a file, and the folders above it where they are missing. The text goes to a file beside it that then takes its
 * place: a disk that fills up, or a process that ends, leaves the old file whole.
 */
export async function writeWhole(path: string, text: string): Promise<void> {
  await promises.mkdir(dirname(path), { recursive: true });
  const beside = join(dirname(path), `.${basename(path)}.${process.pid}.part`);
  try {
    await promises.writeFile(beside, text);
    await promises.rename(beside, path);
  } catch (error) {
    await promises.rm(beside, { force: true });
    throw error;
  }
}

/** What stands at a path; a path that leads through a file leads to nothing. */
export async function standsAt(path: string): Promise<At> {
  try {
    return (await promises.stat(path)).isDirectory() ? 'folder' : 'file';
  } catch {
    return 'nothing';
  }
}

/** Whether two paths lead to one file, by whatever links. */
export async function isSameFile(one: string, other: string): Promise<boolean> {
  return (await real(one)) === (await real(other));
}

async function real(path: string): Promise<string> {
  try {
    return await promises.realpath(path);
  } catch {
    return resolve(path);
  }
}

import type { Io } from './io.js';
import { reasonOf } from './reason-of.js';
import { UsageError } from './usage-error.js';

/** A file to write. */
export interface NewFile {
  readonly path: string;
  readonly text: () => string | Promise<string>;
}

/** What may be overwritten. */
export interface SaveRules {
  /** The file that was read; it is never written. */
  readonly input: string;
  /** Whether files that stand there may be replaced. */
  readonly force: boolean;
}

/** Refuses files that would replace the input, or another file without leave: before anything is written. @throws UsageError */
export async function mayWrite(paths: readonly string[], { input, force }: SaveRules, io: Io): Promise<void> {
  for (const path of paths) {
    if (input !== '-' && (await io.same(path, input)))
      throw new UsageError(`${path} is the case itself, and an input is never overwritten; name another file`);
    const there = await io.at(path);
    if (there === 'folder') throw new UsageError(`${path} cannot be written: it is a folder`);
    if (there === 'file' && !force)
      throw new UsageError(`${path} exists already; --force replaces it, or name another file`);
  }
}

/** Writes each file whole or not at all. @throws UsageError */
export async function save(files: readonly NewFile[], io: Io): Promise<void> {
  for (const { path, text } of files) {
    try {
      await io.write(path, await text());
    } catch (error) {
      throw new UsageError(`${path} cannot be written: ${reasonOf(error)}`);
    }
  }
}

import type { Io } from './io.js';
import { UsageError } from './usage-error.js';

/** The text of a file that the user named; `-` is standard input. @throws UsageError */
export async function readInput(path: string, io: Io): Promise<string> {
  try {
    return path === '-' ? await io.readStandardInput() : await io.read(path);
  } catch (error) {
    throw new UsageError(`${path} cannot be read: ${reasonOf(error)}`);
  }
}

/** Why a file could not be read or written. */
export function reasonOf(error: unknown): string {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  const reasons: Readonly<Record<string, string>> = {
    ENOENT: 'there is no such file',
    EISDIR: 'it is a folder',
    EACCES: 'permission is denied',
    ENOTDIR: 'a part of its path is not a folder',
    ENOSPC: 'no space is left on the device',
  };
  return reasons[code] ?? (error instanceof Error ? error.message : String(error));
}

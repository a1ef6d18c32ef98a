import type { Io } from './io.js';
import { reasonOf } from './reason-of.js';
import { UsageError } from './usage-error.js';

/** The text of a file that the user named; `-` is standard input. @throws UsageError */
export async function readInput(path: string, io: Io): Promise<string> {
  try {
    return path === '-' ? await io.readStandardInput() : await io.read(path);
  } catch (error) {
    throw new UsageError(`${path} cannot be read: ${reasonOf(error)}`);
  }
}

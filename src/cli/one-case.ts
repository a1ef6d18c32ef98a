import type { Io } from './io.js';
import { readInput } from './read-input.js';
import { UsageError } from './usage-error.js';

/** The text of the one case file that a command takes. @throws UsageError */
export function oneCase(command: string, [path, ...others]: readonly string[], io: Io): Promise<string> {
  if (path === undefined || others.length > 0)
    throw new UsageError(`${command} needs one case file; hoopwright ${command} - reads standard input`);
  return readInput(path, io);
}

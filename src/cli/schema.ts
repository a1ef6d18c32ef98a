import { caseFields, caseJsonSchema } from '../json/index.js';
import { readArguments } from './arguments.js';
import { exitCode } from './exit-code.js';
import type { Io } from './io.js';
import { UsageError } from './usage-error.js';

/** `hoopwright schema`: what a case may hold. */
export async function schema(args: readonly string[], io: Io): Promise<number> {
  const { format, positionals } = readArguments(args, { formats: ['json', 'text'] });
  if (positionals.length > 0) throw new UsageError(`schema takes no argument, but got ${positionals.join(' ')}`);
  if (format === 'json') {
    io.out(`${JSON.stringify(caseJsonSchema(), null, 2)}\n`);
    return exitCode.done;
  }
  for (const { path, required, needed, when, expected } of caseFields()) {
    const shape = when === undefined ? '' : ` (${when})`;
    io.out(
      `${path}${shape}${required ? '' : ` (${needed === undefined ? 'may be left out' : `needed ${needed}`})`}: ${expected}\n`,
    );
  }
  return exitCode.done;
}

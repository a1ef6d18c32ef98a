import * as z from 'zod';
import { readArguments } from './arguments.js';
import { exitCode } from './exit-code.js';
import type { Io } from './io.js';
import { readInput } from './read-input.js';
import { reasonOf } from './reason-of.js';
import { UsageError } from './usage-error.js';

const FORMATS = ['text', 'markdown', 'json', 'plan', 'plan-html'];

/** `hoopwright design CASE.json`: the whole design of a repair. */
export async function design(args: readonly string[], io: Io): Promise<number> {
  const { format, units, digits, positionals, own, strict } = readArguments(args, {
    formats: FORMATS,
    own: ['out', 'start', 'actual'],
    strict: true,
  });
  const [path, ...others] = positionals;
  if (path === undefined || others.length > 0) {
    throw new UsageError('design needs one case file; hoopwright design - reads standard input');
  }
  const text = await readInput(path, io);
  // One case is read and the process ends: a schema that compiles itself as it is built costs more than it saves.
  z.config({ jitless: true });
  const { designCase } = await import('./design-case.js');
  const { verdict, written } = designCase(text, { units, digits, strict, start: own['start'], actual: own['actual'] });
  if (own['out'] !== undefined) await save(own['out'], written(formatOf(own['out'], format)), io);
  io.out(written(format));
  return verdict === 'designed' ? exitCode.done : exitCode.noDesign;
}

/** The format that the name of a file asks for. */
function formatOf(path: string, otherwise: string): string {
  const formats: Readonly<Record<string, string>> = {
    md: 'markdown',
    markdown: 'markdown',
    json: 'json',
    txt: 'text',
    html: 'plan-html',
  };
  return formats[/\.([a-z]+)$/iu.exec(path)?.[1]?.toLowerCase() ?? ''] ?? otherwise;
}

async function save(path: string, text: string, io: Io): Promise<void> {
  try {
    await io.write(path, text);
  } catch (error) {
    throw new UsageError(`${path} cannot be written: ${reasonOf(error)}`);
  }
}

import { formulaNamed } from '../evaluate/evaluate.js';
import { exerciseSheet } from '../report/index.js';
import { readArguments } from './arguments.js';
import { exitCode } from './exit-code.js';
import type { Io } from './io.js';
import { UsageError } from './usage-error.js';
import { wholeOf } from './whole.js';

/** `hoopwright exercises FORMULA`: exercises for a class with random inputs, and their worked answers apart. */
export async function exercises(args: readonly string[], io: Io): Promise<number> {
  const { format, units, digits, positionals, own } = readArguments(args, {
    formats: ['text', 'markdown', 'html'],
    own: ['count', 'seed', 'part'],
  });
  const [id, ...others] = positionals;
  if (id === undefined || others.length > 0)
    throw new UsageError(
      'exercises needs the id of one formula, such as pipe/hoop-stress; hoopwright formulas lists them',
    );
  const { part = 'both' } = own;
  if (part !== 'exercises' && part !== 'answers' && part !== 'both')
    throw new UsageError(`--part is "${part}"; it must be one of exercises, answers, both`);
  const formula = formulaNamed(id);
  const [count, seed] = [wholeOf(own, 'count'), wholeOf(own, 'seed')];
  try {
    const written = format as 'text' | 'markdown' | 'html';
    io.out(exerciseSheet(formula, { format: written, units, digits, count, seed, part }));
  } catch (error) {
    // What cannot be drawn is no fault of the program.
    if (error instanceof RangeError) throw new UsageError(error.message);
    throw error;
  }
  return exitCode.done;
}

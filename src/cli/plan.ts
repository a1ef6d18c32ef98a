import { readArguments } from './arguments.js';
import { exitCode } from './exit-code.js';
import { type Form, formOf, planEndings } from './forms.js';
import type { Io } from './io.js';
import { oneCase } from './one-case.js';
import { mayWrite, save } from './save.js';
import { UsageError } from './usage-error.js';

/** `hoopwright plan CASE.json`: the work on site, step by step, as text or as one page. */
export async function plan(args: readonly string[], io: Io): Promise<number> {
  const { format, units, positionals, own, strict, flags, given } = readArguments(args, {
    formats: ['text', 'html'],
    own: ['out', 'start', 'actual', 'passed'],
    flags: ['force'],
    strict: true,
  });
  const { out } = own;
  if (given.has('digits')) throw new UsageError('--digits is for the sheet; a plan counts as packs and tools do');
  if (flags.has('force') && out === undefined)
    throw new UsageError('--force replaces the file that --out names; without --out it has no use');
  const form = out === undefined ? undefined : fileForm(out);
  const text = await oneCase('plan', positionals, io);
  const [input = ''] = positionals;
  if (out !== undefined) await mayWrite([out], { input, force: flags.has('force') }, io);
  const { designCase } = await import('./design-case.js');
  const moved = { start: own['start'], actual: own['actual'], passed: own['passed'] };
  const { verdict, written } = designCase(text, { units, digits: undefined, strict, ...moved });
  if (out !== undefined && form !== undefined) await save([{ path: out, text: () => written(form) }], io);
  io.out(await written(format === 'html' ? 'plan-html' : 'plan-text'));
  return verdict === 'designed' ? exitCode.done : exitCode.noDesign;
}

function fileForm(path: string): Form {
  const form = formOf(path, planEndings);
  if (form !== undefined) return form;
  throw new UsageError(`--out is "${path}"; a plan is one file, whose name must end with .html or .txt`);
}

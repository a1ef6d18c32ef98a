import { version } from '../repair/version.js';
import { exitCode, exitCodeOf, inWords } from './exit-code.js';
import { help } from './help.js';
import type { Io } from './io.js';
import { UsageError } from './usage-error.js';

/** A command: its arguments in, its answer to the streams, its exit code out. */
type Command = (args: readonly string[], io: Io) => Promise<number>;

/** Each command is loaded when it is asked for, so that none waits for the others. */
const commands: Readonly<Record<string, () => Promise<Command>>> = {
  design: async () => (await import('./design.js')).design,
  plan: async () => (await import('./plan.js')).plan,
  compare: async () => (await import('./compare.js')).compare,
  doubt: async () => (await import('./doubt.js')).doubt,
  evaluate: async () => (await import('./evaluate.js')).evaluate,
  check: async () => (await import('./check.js')).check,
  exercises: async () => (await import('./exercises.js')).exercises,
  formulas: async () => (await import('./formulas.js')).formulas,
  survey: async () => (await import('./survey.js')).survey,
  schema: async () => (await import('./schema.js')).schema,
};

/** Runs the program on its arguments. Never throws: whatever goes wrong ends as a sentence and an exit code. */
export async function main(args: readonly string[], io: Io): Promise<number> {
  try {
    return await run(args, io);
  } catch (error) {
    io.err(inWords(error));
    return exitCodeOf(error);
  }
}

async function run([name = '', ...args]: readonly string[], io: Io): Promise<number> {
  if (name === '--version' || name === '-v') {
    io.out(`${version}\n`);
    return exitCode.done;
  }
  if (name === '--help' || name === '-h' || name === 'help') {
    const topic = args[0] ?? '';
    io.out((Object.hasOwn(help, topic) ? help[topic] : help['']) ?? '');
    return exitCode.done;
  }
  const load = Object.hasOwn(commands, name) ? commands[name] : undefined;
  if (load === undefined) {
    const says = name === '' ? 'No command is given' : `"${name}" is not a command`;
    throw new UsageError(
      `${says}; the commands are ${Object.keys(commands).join(', ')}. hoopwright --help tells more.`,
    );
  }
  if (args.includes('--help') || args.includes('-h')) {
    io.out(help[name] ?? '');
    return exitCode.done;
  }
  const command = await load();
  return command(args, io);
}

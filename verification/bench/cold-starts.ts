import { spawnSync } from 'node:child_process';
import { asked } from './asked.js';
import { budgets, within } from './budgets.js';
import { entries } from './built.js';
import type { Row } from './row.js';

const ROUNDS = 20;
const cwd = new URL('../../', import.meta.url);
const EMPTY = ['-e', '0'];

/** Each command and the import of each entry against a start of Node that does nothing, all in turn. */
export function coldStartRows(say: (what: string) => void): Row[] {
  const starts = [
    { what: 'an empty start', args: EMPTY, budget: undefined },
    { what: 'import of an empty module', args: script(''), budget: undefined },
    ...entries.map((entry) => ({
      what: `import of ${entry}`,
      args: script(
        `import * as entry from 'hoopwright${entry.slice(1)}'; if (Object.keys(entry).length === 0) throw 0;`,
      ),
      budget: budgets.imports[entry],
    })),
    ...commands().map((name) => ({
      what: `command ${name}, cold`,
      args: ['dist/cli.cjs', name, ...argumentsOf(name)],
      budget: budgets.commands[name],
    })),
  ];
  const least = starts.map(() => Number.POSITIVE_INFINITY);
  for (let round = 1; round <= ROUNDS; round++) {
    if (round % 5 === 0) say(`round ${round} of ${ROUNDS}`);
    for (const [index, { args }] of starts.entries()) least[index] = Math.min(least[index] as number, wallTime(args));
  }
  const [empty = Number.NaN] = least;
  return starts.slice(1).map(({ what, budget }, index) => {
    const time = least[index + 1] as number;
    const note = `${inMilliseconds(time)}; an empty start ${inMilliseconds(empty)}`;
    return { what, measured: time / empty, unit: 'x', note, ...within(budget) };
  });
}

function script(text: string): string[] {
  return ['--input-type=module', '-e', text];
}

/** The commands that the program itself lists when it is given none. */
function commands(): string[] {
  const { stderr } = spawnSync(process.execPath, ['dist/cli.cjs'], { cwd, encoding: 'utf8' });
  const list = /the commands are ([a-z, ]+)/u.exec(stderr)?.[1];
  if (list === undefined) throw new Error(`hoopwright without a command lists none: ${stderr}`);
  return list.split(', ');
}

function argumentsOf(command: string): readonly string[] {
  const args = asked[command];
  if (args === undefined) throw new Error(`the bench does not know what to ask "${command}": add it to asked.ts`);
  return args;
}

/** From the start of a process to its end [ns]; it must end well and, if it is ours to print, print something. */
function wallTime(args: readonly string[]): number {
  const start = process.hrtime.bigint();
  const { status, stdout } = spawnSync(process.execPath, args, { cwd, stdio: ['ignore', 'pipe', 'inherit'] });
  const time = Number(process.hrtime.bigint() - start);
  if (status !== 0 || (args[0] === 'dist/cli.cjs' && stdout.length === 0))
    throw new Error(`node ${args.join(' ')} ended with ${status} after ${stdout.length} bytes`);
  return time;
}

function inMilliseconds(time: number): string {
  return `${(time / 1e6).toFixed(1)} ms`;
}

import { type CommandLine, readArguments } from './arguments.js';
import { exitCode } from './exit-code.js';
import { designEndings, folderForms, formOf } from './forms.js';
import type { Io } from './io.js';
import { oneCase } from './one-case.js';
import { readInput } from './read-input.js';
import { mayWrite, save } from './save.js';
import { UsageError } from './usage-error.js';

const FORMATS = ['text', 'markdown', 'json', 'plan', 'plan-html'];

/** `hoopwright design CASE.json`: the whole design of a repair. */
export async function design(args: readonly string[], io: Io): Promise<number> {
  const line = readArguments(args, {
    formats: FORMATS,
    own: ['out', 'start', 'actual', 'passed', 'rules'],
    flags: ['full', 'force'],
    strict: true,
  });
  const { format, units, digits, positionals, own, strict, flags } = line;
  const { out } = own;
  const form = out === undefined ? undefined : await formAt(out, io);
  refuseUseless(line, out !== undefined && form === undefined);
  const text = await oneCase('design', positionals, io);
  const from = own['rules'];
  const rules = from === undefined ? undefined : { text: await readInput(from, io), from };
  const [input = ''] = positionals;
  const asked = out === undefined ? [] : pathsOf(out, form);
  await mayWrite(
    asked.map(({ path }) => path),
    { input, force: flags.has('force') },
    io,
  );
  const { designCase } = await import('./design-case.js');
  const designed = designCase(text, {
    units,
    digits,
    strict,
    rules,
    start: own['start'],
    actual: own['actual'],
    passed: own['passed'],
  });
  // Of a design that was not made a folder holds what there is; a drawing that is asked for alone is refused.
  const isMade = designed.verdict === 'designed';
  const paths = isMade || form !== undefined ? asked : asked.filter((each) => each.form !== 'drawing');
  await save(
    paths.map(({ path, form: each }) => ({ path, text: () => designed.written(each) })),
    io,
  );
  io.out(await printed(format, flags, designed, out, paths));
  return designed.verdict === 'designed' ? exitCode.done : exitCode.noDesign;
}

type Designed = import('./design-case.js').DesignedCase;
type Target = { readonly path: string; readonly form: import('./forms.js').Form };

function printed(
  format: string,
  flags: ReadonlySet<string>,
  { written, firstPage }: Designed,
  out: string | undefined,
  paths: readonly Target[],
): string | Promise<string> {
  if (format === 'markdown') return written('sheet-markdown');
  if (format === 'json') return written('design-json');
  if (format === 'plan') return written('plan-text');
  if (format === 'plan-html') return written('plan-html');
  return flags.has('full')
    ? written('sheet-text')
    : firstPage(
        out,
        paths.map(({ path }) => path),
      );
}

/** The form of a file, or nothing for a folder: one that stands there, or a name without an ending. */
async function formAt(path: string, io: Io): Promise<Target['form'] | undefined> {
  if (/[/\\]$/u.test(path) || (await io.at(path)) === 'folder') return undefined;
  return formOf(path, designEndings);
}

function pathsOf(out: string, form: Target['form'] | undefined): Target[] {
  if (form !== undefined) return [{ path: out, form }];
  const folder = out.replace(/[/\\]+$/u, '');
  return folderForms.map(([name, each]) => ({ path: `${folder}/${name}`, form: each }));
}

/** An option that does nothing is a misunderstanding, and is said to be one. @throws UsageError */
function refuseUseless({ format, given, own }: CommandLine, isFolder: boolean): void {
  const hasPlan = isFolder || format === 'plan' || format === 'plan-html';
  const moves = ['start', 'actual', 'passed'].find((name) => given.has(name));
  if (moves !== undefined && !hasPlan)
    throw new UsageError(
      `--${moves} moves the plan, and none is written here; ask for hoopwright plan, --format plan or --out FOLDER`,
    );
  if (given.has('full') && format !== 'text')
    throw new UsageError(`--full is the whole sheet as text; --format ${format} leaves it no use`);
  if (given.has('force') && own['out'] === undefined)
    throw new UsageError('--force replaces files that --out names; without --out it has no use');
  if (given.has('digits') && own['out'] === undefined && (format === 'plan' || format === 'plan-html'))
    throw new UsageError('--digits is for the sheet; a plan counts as packs and tools do');
}

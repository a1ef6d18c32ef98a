import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { bundleTests } from '../in-process/bundle-tests.js';
import { filesIn, root } from '../in-process/files.js';
import { passes, tried } from '../in-process/passes.js';
import { type Guard, guardsOf, isGuarded, switchable } from './guards.js';

/** The job with each of its guards behind a switch, and the tests that are asked about them. */

/** A test that holds with every guard on. */
export interface Asked {
  readonly file: string;
  readonly name: string;
  /** The guards that it comes by. */
  readonly reaches: ReadonlySet<number>;
  /** Whether it holds with one guard off. */
  readonly holdsWithout: (guard: number) => boolean;
}

export function allGuards(): readonly Guard[] {
  return filesIn('src/repair', '.ts')
    .filter(isGuarded)
    .flatMap((file) => guardsOf(file, readFileSync(join(root, file), 'utf8')));
}

/** Runs the tests of some files once with every guard on, and hands back those that hold. */
export async function switchedTests(
  guards: readonly Guard[],
  files: readonly string[],
  wanted: (file: string, name: string) => boolean = () => true,
): Promise<readonly Asked[]> {
  const indexed = guards.map((guard, index) => ({ ...guard, index }));
  const { load } = await bundleTests(
    files,
    (file, text) =>
      switchable(
        text,
        indexed.filter((guard) => guard.file === file),
      ),
    ['__off'],
  );
  let off: number | undefined;
  let reached = new Set<number>();
  const { testsIn } = load({
    __off: (index: number): boolean => {
      reached.add(index);
      return index === off;
    },
  });
  const asked: Asked[] = [];
  for (const file of files) {
    for (const { name, run } of testsIn(file)) {
      if (!wanted(file, name)) continue;
      reached = new Set();
      const { run: act, holds: passesAsIs } = tried(run);
      if (!passesAsIs) continue;
      const holdsWithout = (guard: number): boolean => {
        off = guard;
        const holds = passes(act);
        off = undefined;
        return holds;
      };
      asked.push({ file, name, reaches: reached, holdsWithout });
    }
  }
  return asked;
}

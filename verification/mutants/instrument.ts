import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Instrumenter } from '@stryker-mutator/instrumenter';
import { root } from '../in-process/files.js';

/** Single changes of the source, each behind a switch, made by the instrumenter of Stryker. */

export interface Mutant {
  readonly id: string;
  readonly file: string;
  readonly line: number;
  /** What is changed: `ConditionalExpression`. */
  readonly sort: string;
  readonly original: string;
  readonly replacement: string;
}

/** Texts are for people: what they say is held by eye and by tests of their own. */
const EXCLUDED = ['StringLiteral', 'Regex'];

const silent = new Proxy({}, { get: () => () => false });

/**
 * The lines of the declaration of a formula. It computes nothing: its equation is run against the code with every case, and its
 * inputs, spans and limits are held to the code by tests that draw from it.
 */
function declarationIn(text: string): { readonly from: number; readonly to: number } | undefined {
  const lines = text.split('\n');
  const from = lines.findIndex((line) => line.includes('/* @__PURE__ */ formula<'));
  return from < 0 ? undefined : { from, to: lines.indexOf('});', from) };
}

/** The files with every change in them, switched off. */
export async function instrument(
  files: readonly string[],
): Promise<{ readonly texts: ReadonlyMap<string, string>; readonly mutants: readonly Mutant[] }> {
  const sources = new Map(files.map((file) => [join(root, file), readFileSync(join(root, file), 'utf8')] as const));
  const instrumenter = new Instrumenter(silent as never);
  const result = await instrumenter.instrument(
    [...sources].map(([name, content]) => ({ name, content, mutate: true })),
    { plugins: null, excludedMutations: EXCLUDED, ignorers: [], noHeader: false } as never,
  );
  const declared = new Map([...sources].map(([file, text]) => [file, declarationIn(text)]));
  const shortOf = (path: string): string => path.slice(root.length + 1);
  const mutants = result.mutants
    .filter(({ status, fileName, location }) => {
      const { from = Infinity, to = -1 } = declared.get(fileName) ?? {};
      return status !== 'Ignored' && !(location.start.line >= from && location.end.line <= to);
    })
    .map(({ id, fileName, location, mutatorName, replacement }) => {
      const lines = (sources.get(fileName) ?? '').split('\n');
      const { start, end } = location;
      const inside = lines.slice(start.line, end.line + 1);
      const last = inside.length - 1;
      inside[last] = (inside[last] ?? '').slice(0, end.column);
      inside[0] = (inside[0] ?? '').slice(start.column);
      return {
        id,
        file: shortOf(fileName),
        line: start.line + 1,
        sort: mutatorName,
        original: inside.join('\n'),
        replacement,
      };
    });
  return { texts: new Map(result.files.map(({ name, content }) => [shortOf(name), content])), mutants };
}

import { findFormulas } from '../evaluate/search.js';
import { nearMiss } from '../json/near-miss.js';
import { formulas as all, formulaById } from '../registry/index.js';
import { formulaSheet } from '../report/index.js';
import { readArguments } from './arguments.js';
import { exitCode } from './exit-code.js';
import type { Io } from './io.js';
import { UsageError } from './usage-error.js';

/** `hoopwright formulas [WORD]`: which formulas there are, or the card of one. */
export async function formulas(args: readonly string[], io: Io): Promise<number> {
  const { format, units, digits, positionals } = readArguments(args, { formats: ['text', 'json'] });
  const word = positionals.join(' ');
  const one = formulaById(word);
  const found = one === undefined ? findFormulas(word) : [one];
  if (found.length === 0) throw new UsageError(`No formula holds "${word}"${hint(word)}`);
  if (format === 'json') {
    const declarations = found.map(({ compute: _, limits, ...rest }) => ({
      ...rest,
      limits: limits.map(({ beyond: __, ...limit }) => limit),
    }));
    io.out(`${JSON.stringify(declarations, null, 2)}\n`);
  } else if (one !== undefined) {
    io.out(formulaSheet(one, { units, digits }));
  } else {
    const width = found.reduce((widest, { id }) => Math.max(widest, id.length), 0);
    for (const { id, title } of found) io.out(`${id.padEnd(width)}  ${title}\n`);
  }
  return exitCode.done;
}

function hint(word: string): string {
  const near = nearMiss(
    word,
    all.flatMap(({ id }) => [id, id.split('/')[1] ?? id]),
  );
  return near === undefined ? '; hoopwright formulas lists them all' : `; did you mean "${near}"?`;
}

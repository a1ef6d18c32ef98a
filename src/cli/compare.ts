import { readArguments } from './arguments.js';
import { exitCode } from './exit-code.js';
import type { Io } from './io.js';
import { oneCase } from './one-case.js';

/** `hoopwright compare CASE.json`: the design by its own rule set beside that by the other one. */
export async function compare(args: readonly string[], io: Io): Promise<number> {
  const { format, units, digits, positionals } = readArguments(args, { formats: ['text', 'markdown', 'json'] });
  const text = await oneCase('compare', positionals, io);
  const [{ parseCase }, { compareBases }, { comparisonSheet }] = await Promise.all([
    import('../json/decode-case.js'),
    import('../compare/index.js'),
    import('../report/compared.js'),
  ]);
  const compared = compareBases(parseCase(text).case);
  if (format === 'json') {
    const { designs, ...rest } = compared;
    const written = {
      verdicts: designs.map(({ verdict }) => verdict),
      ruleSets: designs.map(({ ruleSet }) => ruleSet),
      ...rest,
    };
    io.out(`${JSON.stringify(written, null, 2)}\n`);
  } else io.out(comparisonSheet(compared, { format: format === 'markdown' ? 'markdown' : 'text', units, digits }));
  return compared.designs.every(({ verdict }) => verdict === 'designed') ? exitCode.done : exitCode.noDesign;
}

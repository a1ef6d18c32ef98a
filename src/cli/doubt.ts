import { readArguments } from './arguments.js';
import { exitCode } from './exit-code.js';
import type { Io } from './io.js';
import { oneCase } from './one-case.js';
import { readSpread } from './spread.js';
import { readTolerances } from './tolerances.js';
import { wholeOf } from './whole.js';

/** `hoopwright doubt CASE.json`: how the results move with each input, or over the tolerances of some. */
export async function doubt(args: readonly string[], io: Io): Promise<number> {
  const { format, units, digits, positionals, own } = readArguments(args, {
    formats: ['text', 'markdown', 'json'],
    own: ['within', 'spread', 'dependence', 'samples', 'seed'],
  });
  const text = await oneCase('doubt', positionals, io);
  const [{ parseCase }, doubts, sheets] = await Promise.all([
    import('../json/decode-case.js'),
    import('../doubt/index.js'),
    import('../report/doubt.js'),
  ]);
  const { case: repairCase } = parseCase(text);
  const options = { format: format === 'markdown' ? ('markdown' as const) : ('text' as const), units, digits };
  const answer = (found: object, sheet: string, verdict: string): number => {
    io.out(format === 'json' ? `${JSON.stringify(found, null, 2)}\n` : sheet);
    return verdict === 'designed' ? exitCode.done : exitCode.noDesign;
  };
  const { within, spread } = own;
  if (spread !== undefined) {
    const stated = readSpread(spread, own['dependence'], doubts.numericInputs(repairCase));
    const found = doubts.shortfall(repairCase, stated, {
      samples: wholeOf(own, 'samples'),
      seed: wholeOf(own, 'seed'),
    });
    const { shortfallSheet } = await import('../report/shortfall.js');
    return answer(found, shortfallSheet(found, options), 'designed');
  }
  if (within !== undefined) {
    const found = doubts.interval(repairCase, readTolerances(within, doubts.numericInputs(repairCase)));
    return answer(found, sheets.intervalSheet(found, options), found.nominal.verdict);
  }
  const found = doubts.sensitivities(repairCase);
  return answer(found, sheets.sensitivitySheet(found, options), found.at.verdict);
}

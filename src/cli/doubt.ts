import type { OutcomeCourse, Sensitivities } from '../doubt/index.js';
import type { RepairCase } from '../repair/index.js';
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
    formats: ['text', 'markdown', 'html', 'json'],
    own: ['within', 'spread', 'dependence', 'samples', 'seed'],
  });
  const text = await oneCase('doubt', positionals, io);
  const [{ parseCase }, doubts, sheets] = await Promise.all([
    import('../json/decode-case.js'),
    import('../doubt/index.js'),
    import('../report/doubt.js'),
  ]);
  const { case: repairCase } = parseCase(text);
  const options = { format: format === 'json' ? 'text' : (format as 'text' | 'markdown' | 'html'), units, digits };
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
  const course = format === 'html' ? strongestCourse(repairCase, found, doubts.courseOf) : undefined;
  return answer(found, sheets.sensitivitySheet(found, { ...options, course }), found.at.verdict);
}

/** The thickness against the number that moves it most; a count has no course. */
function strongestCourse(
  repairCase: RepairCase,
  { ranked, inputs }: Sensitivities,
  courseOf: typeof import('../doubt/index.js').courseOf,
): OutcomeCourse | undefined {
  const first = ranked.thickness?.find(({ path }) => inputs.find((each) => each.path === path)?.kind !== 'count');
  return first === undefined ? undefined : courseOf(repairCase, first.path, 'thickness');
}

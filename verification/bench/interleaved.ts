/** Runs a calculation and returns a number made of its results, so that none of it can be left out. */
export type Work = () => number;

/** One reading of the clock covers at least this much work, so that the clock itself does not count. */
const READING = 200_000;
const WARM_UP = 0.1;
const FEWEST_ROUNDS = 50;

/**
 * Least time of each work [ns], over many rounds in which every work has its turn: what disturbs the machine hits all
 * alike, and the minimum is what remains without it. The rounds go on for so many seconds of processor time, so that a
 * machine that is shared gives the compiler no less of them.
 *
 * @throws Error when a work gives another number than at first: then it did not do the same, or nothing at all
 */
export function leastTimes(works: readonly Work[], seconds: number): number[] {
  const expected = works.map((work) => work());
  const repeats = works.map((work, index) => repeatsOf(work, expected[index] as number));
  const least = works.map(() => Number.POSITIVE_INFINITY);
  const end = processorSeconds() + seconds;
  for (let round = 0; round < FEWEST_ROUNDS || processorSeconds() < end; round++) {
    for (const [index, work] of works.entries()) {
      const times = repeats[index] as number;
      const time = timed(work, times, expected[index] as number) / times;
      least[index] = Math.min(least[index] as number, time);
    }
  }
  return least;
}

function repeatsOf(work: Work, expected: number): number {
  const end = processorSeconds() + WARM_UP;
  let once = Number.POSITIVE_INFINITY;
  while (processorSeconds() < end) once = Math.min(once, timed(work, 1, expected));
  return Math.max(1, Math.ceil(READING / once));
}

function timed(work: Work, times: number, expected: number): number {
  let off = 0;
  const start = now();
  for (let time = 0; time < times; time++) if (work() !== expected) off++;
  const taken = now() - start;
  if (off > 0 || !Number.isFinite(expected)) {
    throw new Error(`a timed calculation gave ${expected} at first and another number ${off} times of ${times}`);
  }
  return taken;
}

function now(): number {
  return Number(process.hrtime.bigint());
}

function processorSeconds(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1e6;
}

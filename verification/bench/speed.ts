import { performance } from 'node:perf_hooks';
import { measure } from 'mitata';

/** Long enough for the compiler to have seen every path. */
const WARM_UP_MS = 1500;

/** Median time of one call, in nanoseconds, when `work` does `repeats` calls. */
export async function nanoseconds(work: () => unknown, repeats: number): Promise<number> {
  const end = performance.now() + WARM_UP_MS;
  while (performance.now() < end) work();
  const stats = await measure(work);
  return stats.p50 / repeats;
}

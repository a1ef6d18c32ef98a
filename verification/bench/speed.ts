import { measure } from 'mitata';

/** Median time of one call, in nanoseconds, when `work` does `repeats` calls. */
export async function nanoseconds(work: () => unknown, repeats: number): Promise<number> {
  const stats = await measure(work);
  return stats.p50 / repeats;
}

/** Hours of work by another route. Imports nothing that it checks. */

interface Work {
  readonly name: string;
  readonly duration: number;
}

interface Waits {
  readonly step: string;
  readonly after: string;
}

/** Every chain of steps that ends with one of them, each as the names in order. */
function chainsTo(name: string, links: readonly Waits[]): string[][] {
  const before = links.filter(({ step }) => step === name);
  if (before.length === 0) return [[name]];
  return before.flatMap(({ after }) => chainsTo(after, links).map((chain) => [...chain, name]));
}

/**
 * End of a step: of all chains that lead to it the one whose times add up to the most. A chain counts from the last of its
 * steps whose hour was entered.
 */
export function endByChains(
  name: string,
  steps: readonly Work[],
  links: readonly Waits[],
  entered: Readonly<Record<string, number>> = {},
): number {
  const lasts = (of: string): number => steps.find((each) => each.name === of)?.duration ?? Number.NaN;
  let latest = Number.NEGATIVE_INFINITY;
  for (const chain of chainsTo(name, links)) {
    const from = Math.max(
      0,
      chain.findLastIndex((each) => entered[each] !== undefined),
    );
    const counted = chain.slice(from);
    const start = entered[counted[0] ?? ''] ?? 0;
    latest = Math.max(
      latest,
      counted.reduce((sum, each) => sum + lasts(each), start),
    );
  }
  return latest;
}

/** What holds at a time of stretches in a row, looked up; nothing beyond their end. */
export function valueAt<S extends { readonly duration: number }>(stretches: readonly S[], time: number): S | undefined {
  let end = 0;
  for (const each of stretches) {
    end += each.duration;
    if (time < end) return each;
  }
  return undefined;
}

/** Pots stirred and placed one after the other, by a clock that only goes forward. */
export function clockAfterPots(pots: number, mass: number, rate: number, stirring: number): number {
  let clock = 0;
  for (let pot = 0; pot < pots; pot++) {
    clock += stirring;
    clock += mass / pots / rate;
  }
  return clock;
}

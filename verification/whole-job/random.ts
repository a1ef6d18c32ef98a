/** Seeded random numbers in [0, 1): mulberry32. */
export function randomNumbers(seed: number): () => number {
  let state = seed | 0;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4_294_967_296;
  };
}

/** What a draw is made of. */
export interface Draw {
  readonly chance: (share: number) => boolean;
  readonly one: <T>(...choices: readonly T[]) => T;
  readonly between: (low: number, high: number) => number;
  /** A quantity as text, to so many digits. */
  readonly as: (low: number, high: number, unit: string, digits?: number) => string;
}

export function figure(value: number, digits = 4): number {
  return Number(value.toPrecision(digits));
}

export function drawFrom(random: () => number): Draw {
  const between = (low: number, high: number): number => low + (high - low) * random();
  return {
    chance: (share) => random() < share,
    one: (...choices) => choices[Math.floor(random() * choices.length)] as (typeof choices)[number],
    between,
    as: (low, high, unit, digits = 4) => `${figure(between(low, high), digits)} ${unit}`,
  };
}

/** The seed of every seeded draw in the tests and in the report. */
export const SEED = 20261125;

/** Seeded random numbers in [0, 1): mulberry32, two draws joined to 53 bits. */
export type Random = () => number;

/** A generator for a seed and a name, so that adding a formula does not move the draws of another. */
export function seeded(name: string, seed: number = SEED): Random {
  let state = seed;
  for (const character of name) state = Math.imul(state ^ (character.codePointAt(0) ?? 0), 0x01000193);
  const word = (): number => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return (t ^ (t >>> 14)) >>> 0;
  };
  return () => ((word() >>> 5) * 67108864 + (word() >>> 6)) / 9007199254740992;
}

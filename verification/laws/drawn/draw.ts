import type { Random } from '../../oracles/random.js';

/** Single draws. */

export const between = (random: Random, low: number, high: number): number => low + (high - low) * random();
export const oneOf = <T>(random: Random, choices: readonly T[]): T =>
  choices[Math.floor(random() * choices.length)] as T;
export const often = (random: Random, share: number): boolean => random() < share;

import { binomialInterval, mersenneTwister, normalQuantile, openFraction } from '../numeric/index.js';

/** One draw: whether it falls short, by which criterion, and whether the library could not tell. */
export interface Draw {
  readonly short: boolean;
  readonly governing?: string | undefined;
  readonly refused?: string | undefined;
}

/** What the draws came to. */
export interface Simulation {
  /** Cases drawn. */
  readonly samples: number;
  /** Seed that they were drawn with: the same seed draws the same cases. */
  readonly seed: number;
  /** Draws that fell short, those included of which the library could not tell. */
  readonly short: number;
  /** Draws of which it could not tell, and the first reason. */
  readonly refused: number;
  /** Why there is no number. */
  readonly because?: string | undefined;
  /** Share of the cases that fall short. */
  readonly probability: number;
  /** By Clopper and Pearson. */
  readonly interval: {
    /** Chance with which such an interval holds the true share. */
    readonly level: number;
    /** Lower end of the share that falls short. */
    readonly least: number;
    /** Upper end of the share that falls short. */
    readonly most: number;
  };
  /** How often each criterion governed where it fell short. */
  readonly shortBy: Readonly<Record<string, number>>;
}

/**
 * A seeded Monte Carlo: so many draws of independent standard normal numbers, each told short or not.
 *
 * @param inputs how many numbers a draw has
 */
export function simulate(
  tell: (u: readonly number[]) => Draw,
  inputs: number,
  { samples, seed, level }: { readonly samples: number; readonly seed: number; readonly level: number },
): Simulation {
  const next = mersenneTwister(seed);
  const shortBy: Record<string, number> = {};
  let [short, refused] = [0, 0];
  let because: string | undefined;
  for (let i = 0; i < samples; i += 1) {
    const draw = tell(Array.from({ length: inputs }, () => normalQuantile(openFraction(next()))));
    if (draw.refused !== undefined) {
      refused += 1;
      because ??= draw.refused;
    }
    if (!draw.short) continue;
    short += 1;
    if (draw.governing !== undefined) shortBy[draw.governing] = (shortBy[draw.governing] ?? 0) + 1;
  }
  const interval = { level, ...binomialInterval(short, samples, level) };
  return { samples, seed, short, refused, because, probability: short / samples, interval, shortBy };
}

/** Cure kinetics by other routes than the library takes, in plain SI numbers. Nothing here imports what it checks. */

import { R } from './cure-oracles.js';

export function rateConstant(factor: number, energy: number, temperature: number): number {
  return factor * Math.exp(-energy / (R * temperature));
}

/** The conversion after a time: fixed fourth-order steps on the conversion itself; a jump of the rate is met by a chord. */
export function conversionByMarching(
  rate: (conversion: number, clock: number, beyond: boolean) => number,
  start: number,
  duration: number,
  steps: number,
  jump = Number.POSITIVE_INFINITY,
): number {
  const h = duration / steps;
  const advance = (a: number, clock: number, by: number, beyond: boolean): number => {
    const k1 = rate(a, clock, beyond);
    const k2 = rate(a + (by / 2) * k1, clock + by / 2, beyond);
    const k3 = rate(a + (by / 2) * k2, clock + by / 2, beyond);
    const k4 = rate(a + by * k3, clock + by, beyond);
    return a + (by / 6) * (k1 + 2 * k2 + 2 * k3 + k4);
  };
  let a = start;
  for (let i = 0; i < steps; i++) {
    const clock = i * h;
    const next = advance(a, clock, h, a >= jump);
    if (a < jump && next > jump) {
      const part = ((jump - a) / (next - a)) * h;
      a = advance(jump, clock + part, h - part, true);
    } else a = next;
  }
  return a;
}

/** First branch of the two-branch law in closed form, by partial fractions of 1/((k1 + k2 a)(1 - a)(B - a)). */
export function firstBranchTime(k1: number, k2: number, B: number, a: number): number {
  const root = -k1 / k2;
  const weight = (at: number, p: number, q: number): number => 1 / ((at - p) * (at - q));
  // k2 (a - root)(a - 1)(a - B) is the denominator.
  const parts: readonly (readonly [number, number])[] = [
    [root, weight(root, 1, B)],
    [1, weight(1, root, B)],
    [B, weight(B, root, 1)],
  ];
  return parts.reduce((sum, [at, w]) => sum + w * Math.log(Math.abs((a - at) / at)), 0) / k2;
}

import { bisect } from './root.js';

/**
 * Confidence interval of Clopper and Pearson (Biometrika 26 (1934) 404-413) for a probability of which `hits` of `trials`
 * were counted: its ends are the probabilities at which so many, or so few, are just as rare as the level allows. It never
 * covers less often than it says.
 *
 * @param hits   whole, from 0 to `trials`
 * @param trials whole, at least 1
 * @param level  above 0 and below 1: 0.95
 */
export function binomialInterval(hits: number, trials: number, level: number): { least: number; most: number } {
  const rare = (1 - level) / 2;
  return {
    least: hits === 0 ? 0 : 1 - endOf(trials - hits, trials, rare),
    most: hits === trials ? 1 : endOf(hits, trials, rare),
  };
}

/** The probability at which at most `hits` are counted as rarely as `rare`. */
function endOf(hits: number, trials: number, rare: number): number {
  const found = bisect((p) => atMost(hits, trials, p) - rare, Number.MIN_VALUE, 1 - Number.EPSILON / 2);
  return found?.root ?? Number.NaN;
}

/** The probability that at most `hits` of `trials` are counted, each term by its logarithm. */
function atMost(hits: number, trials: number, p: number): number {
  let logTerm = trials * Math.log1p(-p);
  const odds = Math.log(p) - Math.log1p(-p);
  let sum = Math.exp(logTerm);
  for (let i = 1; i <= hits; i += 1) {
    logTerm += Math.log((trials - i + 1) / i) + odds;
    sum += Math.exp(logTerm);
  }
  return Math.min(1, sum);
}

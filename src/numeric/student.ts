import { bisect } from './root.js';

/**
 * Chance that Student's t of whole degrees of freedom lies from -t to t: a finite sum in theta = atan(t/sqrt(nu)) (Abramowitz
 * and Stegun, 26.7.3 and 26.7.4).
 */
export function studentWithin(t: number, degrees: number): number {
  const theta = Math.atan(t / Math.sqrt(degrees));
  const [s, cc] = [Math.sin(theta), Math.cos(theta) ** 2];
  const odd = degrees % 2 === 1;
  let term = odd ? Math.cos(theta) : 1;
  let sum = degrees === 1 ? 0 : term;
  for (let j = odd ? 3 : 2; j <= degrees - 2; j += 2) {
    term *= ((j - 1) / j) * cc;
    sum += term;
  }
  return odd ? (2 / Math.PI) * (theta + s * sum) : s * sum;
}

/**
 * The t that Student's distribution of whole degrees of freedom, 1 and more, leaves between -t and t with a chance above 0 and
 * below 1.
 *
 * @returns `undefined` where the chance is so near 1 that no number holds the quantile
 */
export function studentQuantile(chance: number, degrees: number): number | undefined {
  // In the angle, so that the bracket is closed.
  const found = bisect((angle) => studentWithin(Math.tan(angle), degrees) - chance, 0, Math.PI / 2 - 1e-12);
  return found === undefined ? undefined : Math.tan(found.root);
}

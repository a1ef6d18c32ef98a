import type { PlyStrengths, PlyStress } from './strengths.js';

/** One over the ratio: 0 without stress. */
export function tsaiWuUse(stress: PlyStress, strengths: PlyStrengths): number {
  const { alongTension: Xt, alongCompression: Xc, acrossTension: Yt, acrossCompression: Yc } = strengths;
  const [x, y, s] = [stress.alongStress / Xt, stress.acrossStress / Yt, stress.shearStress / strengths.shearStrength];
  const [p, q] = [Xt / Xc, Yt / Yc];
  const a = x * x * p + y * y * q + s * s - x * y * Math.sqrt(p * q);
  const b = x * (1 - p) + y * (1 - q);
  const root = Math.sqrt(b * b + 4 * a);
  // Where b is negative, b + root would cancel.
  return b >= 0 ? (b + root) / 2 : (2 * a) / (root - b);
}

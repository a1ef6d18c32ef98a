import type { Job } from './read-job.js';

/** Diameter over the filler where it is thickest. */
export function wrappedDiameterOf({ filler }: Job, diameter: number): number {
  return diameter + 2 * Math.max(filler?.thickness ?? 0, filler?.thicknessOverDefect ?? 0);
}

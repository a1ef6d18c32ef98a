import type { Parts } from './parts.js';
import type { Job } from './read-job.js';

/** Newton on the pad that putty alone is trusted with (CHANGELOG, practice.mostOnPutty). */
const MOST_ON_PUTTY = 150;

/** Steel that the pad lies on all round the hole (CHANGELOG, practice.leastPadMargin). */
const LEAST_MARGIN = 0.01;

/** A seal that does not hold: too much pressure, a sheet that lets the putty out, bands taken off a line that pushes. */
export function sealFailsBefore(job: Job, { seal, found }: Parts): boolean {
  if (seal === undefined || job.seal === undefined) return false;
  if (seal.padDiameter < ((found.holeToday ?? 0) + 2 * LEAST_MARGIN) * (1 - 1e-12)) return true;
  const pressure = job.line.pressure ?? 0;
  const { across } = job.seal.sheet;
  if (pressure > seal.highestPressure) return true;
  if (across !== undefined && across < seal.padDiameter) return true;
  // Bands over a rim that is not stated are asked for first.
  if (pressure === 0 || across === undefined || job.seal.collar === undefined) return false;
  const off = job.seal.bands === 'removed before the wrap';
  return off && (job.line.state !== 'static head' || seal.forceOnPad > MOST_ON_PUTTY);
}

import { temperatureLimit } from './allowable-strain.js';
import { neighbourFails } from './apart.js';
import type { Parts } from './parts.js';
import { type Found, leaksNow } from './pipe-as-found.js';
import type { Job } from './read-job.js';
import { ruleOf } from './rules.js';
import { sealFailsBefore } from './seal-holds.js';
import { metalFails } from './slot.js';
import { soundPipeYields, spanBuckles } from './sound-pipe.js';

export const METHODS_NEED_METAL = new Set(['substrate sharing load', 'substrate yielded']);

/** The laminate is designed only where its limits, the class and the sound pipe allow it, and something holds a live leak. */
export function reachesLaminate(job: Job, found: Found): boolean {
  if (!strainsStand(job, found)) return false;
  if (soundPipeYields(job, found)) return false;
  return !leaksUnheld(job);
}

/** The pipe leaks, people stand beside it, and nothing says how the leak is held: then nothing is worked out on it. */
export function leaksUnheld(job: Job): boolean {
  return leaksNow(job) && (job.line.pressure ?? 0) > 0 && job.seal === undefined;
}

/** Strains are allowed where the limits are known and kept. */
export function strainsStand(job: Job, found: Found): boolean {
  const { service, laminate } = job;
  const limit = temperatureLimit(job, found.throughWall);
  if (limit === undefined || service.designTemperature > limit) return false;
  return laminate.strainToFailure !== undefined && laminate.strainToFailure >= ruleOf(job, 'leastFailureStrain');
}

export function classTooLow(job: Job): boolean {
  const { basis, repair, service } = job;
  if (basis !== 'ISO 24817') return false;
  const { designPressure: P, designTemperature: T } = service;
  if (repair.class < 3 && (service.hazards.length > 0 || service.phase !== 'liquid')) return true;
  if (repair.class === 3) return false;
  const limit = (of: string): number => ruleOf(job, `classes.${repair.class}.highest${of}`);
  if (P > limit('Pressure')) return true;
  // Class 2 holds below its temperature, class 1 up to it.
  return repair.class === 1 ? T > limit('Temperature') || service.safetyCritical : T >= limit('Temperature');
}

/** Gas or what is hazardous under pressure, and nobody has written down how to work on it. */
export function hasNoProcedure({ line, service }: Job): boolean {
  const hurts = service.phase !== 'liquid' || service.hazards.length > 0;
  return (line.pressure ?? 0) > 0 && hurts && line.writtenProcedure === 'none';
}

/** The wrap is laid out only where nothing stands against its laminate, its bond, its class, the line and the seal. */
export function isWrapped(job: Job, parts: Parts): boolean {
  const { found, laminate } = parts;
  if (!reachesLaminate(job, found) || classTooLow(job) || 'none' in laminate || isThick(job, laminate, found))
    return false;
  if ((job.laminate.lapShearStrength ?? 0) < ruleOf(job, 'lapShear.withWarning')) return false;
  if ((job.line.pressure ?? 0) > (parts.line.highestPressure ?? Number.POSITIVE_INFINITY)) return false;
  if (metalFails(job, found).length > 0) return false;
  if (job.apart.some((loss) => neighbourFails(job, found, loss).length > 0)) return false;
  return !spanBuckles(job, found) && !hasNoProcedure(job) && !sealFailsBefore(job, parts);
}

export function isThick(job: Job, { laidThickness = 0 }: { readonly laidThickness?: number }, found: Found): boolean {
  return laidThickness >= found.outsideDiameter / ruleOf(job, 'thinLaminateRatio');
}

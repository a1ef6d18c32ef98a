import type { Job } from './read-job.js';

export interface Moduli {
  readonly hoop: number;
  readonly axial: number;
}

/** Lead angle of a tape on the bare pipe, where it is steepest. */
export function leadAngle({ wrap }: Job, diameter: number): number {
  if (wrap.form !== 'tape') return 0;
  return Math.asin(Math.min(1, (wrap.width * (1 - wrap.overlap)) / (Math.PI * diameter)));
}

/** Moduli round and along the pipe of a tape that runs off the hoop direction, free to shear: the rotated compliance. */
export function modulusAtAngle(moduli: Moduli, poisson: number, shear: number, angle: number): Moduli {
  const c2 = Math.cos(angle) ** 2;
  const s2 = Math.sin(angle) ** 2;
  const cross = 1 / shear - (2 * poisson) / moduli.hoop;
  return {
    hoop: 1 / ((c2 * c2) / moduli.hoop + cross * c2 * s2 + (s2 * s2) / moduli.axial),
    axial: 1 / ((s2 * s2) / moduli.hoop + cross * c2 * s2 + (c2 * c2) / moduli.axial),
  };
}

/** Moduli of the laminate as it is laid, along the directions of the pipe. */
export function moduliOnPipe(job: Job, diameter: number): Moduli | undefined {
  const { poissonRatio, shearModulus } = job.laminate;
  const { laminate } = job;
  const warm = laminate.atDesignTemperature ?? laminate;
  const hoop = Math.min(laminate.hoopModulus, warm.hoopModulus);
  const axial = Math.min(laminate.axialModulus, warm.axialModulus);
  if (job.wrap.form === 'sheet') return { hoop, axial };
  if (shearModulus === undefined) return undefined;
  // A turn may raise the modulus along the pipe: no ply is saved by that.
  const turned = modulusAtAngle({ hoop, axial }, poissonRatio, shearModulus, leadAngle(job, diameter));
  return { hoop: Math.min(hoop, turned.hoop), axial: Math.min(axial, turned.axial) };
}

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
function modulusAtAngle(moduli: Moduli, poisson: number, shear: number, angle: number): Moduli {
  const c2 = Math.cos(angle) ** 2;
  const s2 = Math.sin(angle) ** 2;
  const cross = 1 / shear - (2 * poisson) / moduli.hoop;
  return {
    hoop: 1 / ((c2 * c2) / moduli.hoop + cross * c2 * s2 + (s2 * s2) / moduli.axial),
    axial: 1 / ((s2 * s2) / moduli.hoop + cross * c2 * s2 + (c2 * c2) / moduli.axial),
  };
}

/** Moduli of a ply as it lies on the pipe; a turn that raises one of them saves no ply. */
export function plyOnPipe(job: Job, diameter: number, ply: { hoopModulus: number; axialModulus: number }): Moduli {
  const { poissonRatio, shearModulus } = job.laminate;
  const straight = { hoop: ply.hoopModulus, axial: ply.axialModulus };
  if (job.wrap.form === 'sheet' || shearModulus === undefined) return straight;
  const turned = modulusAtAngle(straight, poissonRatio, shearModulus, leadAngle(job, diameter));
  return { hoop: Math.min(straight.hoop, turned.hoop), axial: Math.min(straight.axial, turned.axial) };
}

/** Moduli of the laminate along the directions of the pipe: cold or warm, whichever is the lower. */
export function moduliOnPipe(job: Job, diameter: number): Moduli | undefined {
  const { laminate } = job;
  if (job.wrap.form === 'tape' && laminate.shearModulus === undefined) return undefined;
  const warm = laminate.atDesignTemperature ?? laminate;
  return plyOnPipe(job, diameter, {
    hoopModulus: Math.min(laminate.hoopModulus, warm.hoopModulus),
    axialModulus: Math.min(laminate.axialModulus, warm.axialModulus),
  });
}

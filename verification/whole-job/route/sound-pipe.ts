import { alongPipe } from './loads-of-case.js';
import type { Found } from './pipe-as-found.js';
import type { Job } from './read-job.js';

export function soundPipeYields(job: Job, found: Found): boolean {
  return stressOfSoundPipe(job, found) > job.pipe.material.yieldStrength;
}

/** Round the pipe, and by Tresca with the loads along it. */
export function stressOfSoundPipe(job: Job, found: Found): number {
  const { service, loads } = job;
  const D = found.outsideDiameter;
  const t = found.wall;
  const end = (service.designPressure * Math.PI * D * D) / 4;
  const { pull, push } = alongPipe(job, D);
  const forces = pull > 0 && push < 0 ? [pull, push] : [pull + push];
  const bend = (32 * D * Math.abs(loads.bendingMoment ?? 0)) / (Math.PI * (D ** 4 - (D - 2 * t) ** 4));
  const torsion = Math.abs(loads.torsion ?? 0);
  // Torsion of a round tube at its outside: T r / J.
  const polar = (Math.PI * (D ** 4 - (D - 2 * t) ** 4)) / 32;
  const shear = (2 * Math.abs(loads.shearForce ?? 0)) / (Math.PI * t * (D - t)) + (torsion * D) / 2 / polar;
  // Principal stresses at the pulled and at the pushed edge, and none through the wall.
  const edges = forces
    .map((force) => (end + force) / (Math.PI * D * t))
    .flatMap((axial) => [axial + bend, axial - bend]);
  const tresca = edges.map((along) => {
    const middle = (found.hoopStressSound + along) / 2;
    const radius = Math.hypot((found.hoopStressSound - along) / 2, shear);
    return Math.max(middle + radius, 0) - Math.min(middle - radius, 0);
  });
  return Math.max(...tresca);
}

/** A free span under push (Euler between hinges, 3 on the force), the wall of the end of the life all round. */
export function spanBuckles(job: Job, { outsideDiameter: D, wallAtEndOfLife }: Found): boolean {
  const { loads, pipe } = job;
  const { freeSpan: span } = loads;
  const { push: force } = alongPipe(job, D);
  if (span === undefined || force >= 0) return false;
  const section = (Math.PI / 64) * (D ** 4 - (D - 2 * wallAtEndOfLife) ** 4);
  return -force > (Math.PI ** 2 * (pipe.material.modulus ?? 207e9) * section) / (3 * span * span);
}

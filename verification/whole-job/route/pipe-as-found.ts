import type { Job } from './read-job.js';
import { LEAST_HOLE } from './rules.js';

/** The pipe today and at the end of the life of the repair (pipe-and-defect.md, 1.6). */
export interface Found {
  readonly outsideDiameter: number;
  readonly wall: number;
  readonly hoopStressSound: number;
  readonly hoopStressThinned?: number;
  readonly wallToday: number;
  readonly wallAtEndOfLife: number;
  readonly depthAtEndOfLife: number;
  readonly lengthAtEndOfLife: number;
  readonly widthAtEndOfLife: number;
  readonly throughWall: boolean;
  readonly holeAtEndOfLife?: number;
  readonly designHole?: number;
  readonly holeToday?: number;
}

/** Wall lost per time: as stated, or the larger of the long-term and the short-term rate. */
function wallLossRate({ defect, pipe }: Job): number {
  const depth = defect.growth?.depth;
  if (depth === undefined || typeof depth === 'number') return depth ?? 0;
  // The reading of today may be off: what it may be less is lost too.
  const today = defect.remainingWall - (defect.readingError ?? 0);
  const present = today > 0 ? today : defect.remainingWall;
  const long = (pipe.wallThickness - present) / depth.service;
  const short = (depth.previousWall - present) / depth.sincePrevious;
  return Math.max(long, short, 0);
}

export function pipeAsFound(job: Job): Found {
  const { pipe, defect, service, repair } = job;
  const wall = pipe.wallThickness;
  const outsideDiameter = pipe.outsideDiameter ?? (pipe.circumference as number) / Math.PI;
  const wallToday = defect.remainingWall - (defect.readingError ?? 0);
  const wallAtEndOfLife = Math.max(0, wallToday - wallLossRate(job) * repair.life);
  const spread = 2 * (defect.growth?.length ?? 0) * repair.life;
  const lengthAtEndOfLife = defect.axialLength + spread;
  const widthAtEndOfLife = Math.min(defect.circumferentialWidth + spread, Math.PI * outsideDiameter);
  const isHole = defect.kind === 'through-wall hole';
  const throughWall = isHole || wallAtEndOfLife < 1e-3;
  const hoopStressSound = (service.designPressure * outsideDiameter) / (2 * wall);
  const common = {
    outsideDiameter,
    wall,
    hoopStressSound,
    wallToday,
    wallAtEndOfLife,
    depthAtEndOfLife: wall - wallAtEndOfLife,
    lengthAtEndOfLife,
    widthAtEndOfLife,
    throughWall,
  };
  if (!throughWall) {
    return { ...common, hoopStressThinned: (service.designPressure * outsideDiameter) / (2 * wallAtEndOfLife) };
  }
  // The circle that encloses the whole defect.
  const whole = Math.hypot(lengthAtEndOfLife, defect.circumferentialWidth + spread);
  const grown = isHole ? (defect.holeDiameter as number) + spread : 0;
  const usedUp = wallAtEndOfLife < 1e-3 ? (defect.holeAtEndOfLife ?? whole) : 0;
  const holeAtEndOfLife = Math.max(grown, usedUp);
  return {
    ...common,
    holeAtEndOfLife,
    designHole: Math.max(LEAST_HOLE, holeAtEndOfLife),
    ...(isHole ? { holeToday: defect.holeDiameter as number } : {}),
  };
}

import type { Opening } from './opening.js';
import type { Job } from './read-job.js';
import { ruleOf } from './rules.js';

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
  readonly slotAtEndOfLife?: Opening;
  readonly designSlot?: Opening;
}

/** Wall lost per time: as stated, or the larger of the long-term and the short-term rate. */
export function wallLossRate({ defect, pipe }: Job): number {
  const depth = defect.growth?.depth;
  if (depth === undefined || typeof depth === 'number') return depth ?? 0;
  // The reading of today may be off: what it may be less is lost too.
  const today = defect.remainingWall - (defect.readingError ?? 0);
  const present = today > 0 ? today : defect.remainingWall;
  const long = (pipe.wallThickness - present) / depth.service;
  const short = (depth.previousWall - present) / depth.sincePrevious;
  return Math.max(long, short, 0);
}

/** Loss from inside goes on under the repair, and so does one of unknown cause: without its rate nothing is known of the wall. */
export function growthUnknown({ defect }: Job): boolean {
  return defect.growth === undefined && defect.cause !== 'external corrosion' && defect.cause !== 'mechanical damage';
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
  const throughWall = leaksNow(job) || wallAtEndOfLife < ruleOf(job, 'throughWallBelow');
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
  if (defect.kind === 'through-wall slot') return { ...common, ...slotOf(job, common, spread) };
  const isHole = defect.kind === 'through-wall hole';
  // The circle that encloses the whole defect.
  const whole = Math.hypot(lengthAtEndOfLife, defect.circumferentialWidth + spread);
  const grown = isHole ? (defect.holeDiameter as number) + spread : 0;
  const usedUp = wallAtEndOfLife < ruleOf(job, 'throughWallBelow') ? (defect.holeAtEndOfLife ?? whole) : 0;
  const holeAtEndOfLife = Math.max(grown, usedUp);
  return {
    ...common,
    holeAtEndOfLife,
    designHole: Math.max(ruleOf(job, 'hole.leastDiameter'), holeAtEndOfLife),
    ...(isHole ? { holeToday: defect.holeDiameter as number } : {}),
  };
}

/** The opening of a slot: grown at each end, the whole defect where its wall is used up, and no way less than the least hole. */
function slotOf(
  job: Job,
  { wallAtEndOfLife, lengthAtEndOfLife, widthAtEndOfLife }: Found,
  spread: number,
): Partial<Found> {
  const { defect, assessment } = job;
  const { slot } = defect;
  const least = ruleOf(job, 'hole.leastDiameter');
  // Without a factor nobody knows whether the metal beside it holds, and nothing is built on it.
  const factor = assessment?.safetyFactor ?? assessment?.designFactor;
  if (slot === undefined) return {};
  const holeToday = Math.hypot(slot.axialLength, slot.circumferentialWidth);
  if (factor === undefined) return { holeToday };
  const opening =
    wallAtEndOfLife < ruleOf(job, 'throughWallBelow')
      ? { axialLength: lengthAtEndOfLife, circumferentialWidth: widthAtEndOfLife }
      : {
          axialLength: slot.axialLength + spread,
          circumferentialWidth: Math.min(slot.circumferentialWidth + spread, widthAtEndOfLife),
        };
  return {
    slotAtEndOfLife: opening,
    designSlot: {
      axialLength: Math.max(least, opening.axialLength),
      circumferentialWidth: Math.max(least, opening.circumferentialWidth),
    },
    holeAtEndOfLife: Math.hypot(opening.axialLength, opening.circumferentialWidth),
    holeToday,
  };
}

/** A hole or a slot: the pipe leaks as it is. */
export function leaksNow({ defect }: Job): boolean {
  return defect.kind === 'through-wall hole' || defect.kind === 'through-wall slot';
}

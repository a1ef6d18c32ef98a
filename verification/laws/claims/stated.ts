import type { Designed } from '../../../src/repair/index.js';

/** What a claim needs of the case, worked out without the library. */

type Stated = Designed['case'];

/** At least as large, but for the last digits of sums. */
export const reaches = (value: number, least: number): boolean => value >= least - 1e-9 * Math.abs(least);

/** The pressure that all of it is designed for: that of a surge, where it is higher. */
export function pressureOf({ service }: Stated): number {
  const surge = typeof service.surge === 'number' ? service.surge : 0;
  return Math.max(service.designPressure, surge);
}

export const forceOf = ({ loads }: Stated): number => (loads.axialForce === 'none' ? 0 : loads.axialForce);

/** Of the line from the first touch to the cured laminate. */
export const atWork = ({ line }: Stated): number => (line.state === 'empty, dry, isolated, vented' ? 0 : line.pressure);

/** The least wall that is surely there today. */
export function wallNow({ defect }: Stated): number {
  return Math.max(0, defect.remainingWall - (defect.readingError === 'none' ? 0 : defect.readingError));
}

/** The least wall at the end of the life, where a rate is stated. */
export function wallThen(stated: Stated): number {
  const { growth } = stated.defect;
  const rate = growth === 'none' ? 0 : typeof growth.depth === 'number' ? growth.depth : 0;
  return Math.max(0, wallNow(stated) - rate * stated.repair.life);
}

/** The circle that the laminate goes round. */
export function wrappedOf({ pipe, filler }: Stated): number {
  return (pipe.outsideDiameter as number) + 2 * (filler === 'none' ? 0 : filler.thicknessOverDefect);
}

/** From the highest to the lowest steel of service and of the day. */
export const hottest = ({ service, site }: Stated): number => Math.max(service.designTemperature, site.pipeTemperature);

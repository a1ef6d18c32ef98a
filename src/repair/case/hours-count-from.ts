import type { Temperature } from '../../quantity/index.js';
import type { LaminateSystem } from './case-materials.js';

/** The coldest steel whose hours count for the laminate: where it still cures, and no colder than its sample was cured. */
export function hoursCountFrom(coldestToCure: Temperature, { transitionCuredAt }: LaminateSystem): Temperature {
  return Math.max(coldestToCure, transitionCuredAt ?? coldestToCure) as Temperature;
}

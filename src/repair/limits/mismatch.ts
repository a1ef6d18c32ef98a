import { step } from '../../formula/index.js';
import { farthestTemperature } from '../../laminate/index.js';
import type { Temperature } from '../../quantity/index.js';
import type { Workbook } from '../job/workbook.js';
import { warmestWhileCuring } from '../mix-and-cure/steel-temperatures.js';
import { coldestOf } from './lowest-temperature.js';

/** Temperature at which the laminate sets, and the one in service that is judged against it. */
export interface Mismatch {
  readonly set: Temperature;
  readonly service: Temperature;
  readonly purpose: string;
}

/**
 * As the steel is read on the day, out to the farthest end of service; and where it gets warmer while the laminate sets, as
 * under a heating blanket, from there down to the coldest steel, which is the steel of the day at the latest.
 */
export function mismatchesOf(work: Workbook): Mismatch[] {
  const { site } = work.case;
  const asRead: Mismatch = { set: site.pipeTemperature, service: farthestFromInstallation(work), purpose: '' };
  const warmest = warmestWhileCuring(site);
  if (warmest <= site.pipeTemperature) return [asRead];
  const asHeated = { set: warmest, service: coldestOf(work.case), purpose: ', set on the warmest steel of the cure' };
  return [asRead, asHeated];
}

/** The end of the temperature range where pipe and laminate part company most. */
function farthestFromInstallation(work: Workbook): Temperature {
  const { service, site } = work.case;
  const { designTemperature, lowestTemperature } = service;
  if (lowestTemperature === undefined) return designTemperature;
  return step(work.recorder, 'laminate/farthest-temperature', farthestTemperature, {
    installationTemperature: site.pipeTemperature,
    designTemperature,
    lowestTemperature,
  });
}

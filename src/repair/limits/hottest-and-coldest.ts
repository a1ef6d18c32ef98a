import type { Temperature } from '../../quantity/index.js';
import type { RepairCase } from '../case/case.js';
import { coldestSteel, warmestSteel } from '../mix-and-cure/steel-temperatures.js';

/** The hottest steel, in service or on any hour of the work. */
export function hottestEver({ service, site }: RepairCase): Temperature {
  return Math.max(service.designTemperature, warmestSteel(site)) as Temperature;
}

/** The coldest steel, in service or on any hour of the work; the stated design temperature where nothing colder is. */
export function coldestEver({ service, site }: RepairCase): Temperature {
  const { designTemperature, lowestTemperature = designTemperature } = service;
  return Math.min(designTemperature, lowestTemperature, coldestSteel(site)) as Temperature;
}

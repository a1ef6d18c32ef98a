import type { Temperature } from '../../quantity/index.js';
import type { Workbook } from '../job/workbook.js';
import { coldestSteel, warmestSteel } from '../mix-and-cure/steel-temperatures.js';
import { coldestEver, hottestEver } from './hottest-and-coldest.js';

/** Temperature at which the laminate sets, and the one in service that is judged against it. */
export interface Mismatch {
  readonly set: Temperature;
  readonly service: Temperature;
  readonly purpose: string;
}

/**
 * Nobody knows at which hour of the cure the laminate sets: on the coldest steel that is read or foreseen, as in a cold night,
 * from where it warms up to the hottest; or on the warmest, as under a heating blanket, from where it cools down to the coldest.
 */
export function mismatchesOf(work: Workbook): Mismatch[] {
  const { site } = work.case;
  const [coldest, warmest] = [coldestSteel(site), warmestSteel(site)];
  const warming: Mismatch = { set: coldest, service: hottestEver(work.case), purpose: ', set on the coldest steel' };
  const cooling: Mismatch = { set: warmest, service: coldestEver(work.case), purpose: ', set on the warmest steel' };
  return cooling.set === cooling.service ? [warming] : [warming, cooling];
}

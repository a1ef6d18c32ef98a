import type { Temperature } from '../../quantity/index.js';
import type { CureSheet, RepairCase } from '../case/case.js';

/** The coldest steel on which every material of the job still cures. */
export function coldestForCure({ laminate, filler }: RepairCase): Temperature {
  const forLaminate = coldestOf(laminate.cure);
  return filler === 'none' ? forLaminate : (Math.max(forLaminate, coldestOf(filler.cure)) as Temperature);
}

/** What the maker states; for a system that moisture cures, the coldest of the maker's rows. */
function coldestOf(cure: CureSheet): Temperature {
  if (cure.mechanism !== 'moisture') return cure.minimumTemperature;
  let coldest = Number.POSITIVE_INFINITY;
  for (const { temperature } of cure.rows) coldest = Math.min(coldest, temperature);
  return coldest as Temperature;
}

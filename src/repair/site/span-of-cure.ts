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

/** The hottest steel at which every material of the job was tested: above it nobody knows how fast it gels, or how well it cures. */
export function hottestForCure({ laminate, filler }: RepairCase): Temperature {
  const forLaminate = hottestOf(laminate.cure);
  return filler === 'none' ? forLaminate : (Math.min(forLaminate, hottestOf(filler.cure)) as Temperature);
}

function hottestOf(cure: CureSheet): Temperature {
  if (cure.mechanism !== 'moisture') return cure.testedTo;
  let hottest = Number.NEGATIVE_INFINITY;
  for (const { temperature } of cure.rows) hottest = Math.max(hottest, temperature);
  return hottest as Temperature;
}

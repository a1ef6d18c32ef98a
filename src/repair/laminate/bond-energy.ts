import { decide } from '../../formula/index.js';
import type { EnergyReleaseRate } from '../../quantity/index.js';
import type { Footprint } from '../design/design.js';
import { need, type Workbook } from '../job/workbook.js';
import { energyToSteel } from './energy-to-steel.js';

/** The energy release rate that the laminate over the leak counts on, and what it was found on. */
export interface BondEnergy {
  readonly energy: EnergyReleaseRate;
  readonly foundOver: 'steel' | 'filler' | 'seal';
  /** That of the bond to the prepared pipe, where it is known and counts beside it. */
  readonly toSteel: EnergyReleaseRate | undefined;
}

/** The bond to the prepared pipe, or what the system was qualified with in its place. */
export function bondEnergyOf(work: Workbook, footprint: Footprint | undefined): BondEnergy | undefined {
  const overFiller = bondOverFiller(work);
  if (overFiller !== undefined) return { energy: overFiller, foundOver: 'filler', toSteel: undefined };
  const toSteel = energyToSteel(work);
  const { energyReleaseRateOverSeal: overSeal } = work.case.laminate;
  if (overSeal !== undefined && footprint?.under === 'seal') {
    if (footprint.bonded === 'beside it' && footprint.diameter <= overSeal.footprint) {
      decide(
        work.recorder,
        'energy release rate found over a seal',
        'the footprint is at most as large as the one it was found over',
      );
      return { energy: overSeal.energyReleaseRate, foundOver: 'seal', toSteel };
    }
    if (toSteel !== undefined && overSeal.energyReleaseRate < toSteel) {
      decide(
        work.recorder,
        'energy release rate found over a smaller seal',
        'it earns no credit over a larger one, and it is the lower one',
      );
      // It was not found over a rim as long as this one: the worst place of that counts as with any other energy.
      return { energy: overSeal.energyReleaseRate, foundOver: 'steel', toSteel };
    }
  }
  if (toSteel !== undefined) return { energy: toSteel, foundOver: 'steel', toSteel };
  if (work.case.laminate.holeTests !== undefined) return undefined;
  return need(
    work,
    'laminate.energyReleaseRate',
    'the resistance of the laminate over a hole rests on the energy release rate of its bond, lower confidence limit',
    'the maker of the repair system: leak tests of the qualification',
  );
}

/** A wrap that lies on filler all over is held by the bond to the filler, as qualified. */
function bondOverFiller(work: Workbook): EnergyReleaseRate | undefined {
  const { filler } = work.case;
  if (filler === 'none' || filler.underWholeWrap !== true || filler.qualifiedOverFiller === undefined) return undefined;
  decide(
    work.recorder,
    'energy release rate of the bond over filler',
    'the filler lies under the whole wrap, and the system was qualified that way',
  );
  return filler.qualifiedOverFiller.energyReleaseRate;
}

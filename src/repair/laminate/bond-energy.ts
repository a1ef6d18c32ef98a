import { decide } from '../../formula/index.js';
import { type EnergyReleaseRate, exactly, line } from '../../quantity/index.js';
import type { Footprint } from '../design/design.js';
import { need, type Workbook, warn } from '../job/workbook.js';
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
      if (toSteel !== undefined && overSeal.energyReleaseRate > toSteel)
        warnOfTougher(work, overSeal.energyReleaseRate, toSteel);
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

/** Less conservative than the bond to bare steel, and as easily a slip of a digit. */
function warnOfTougher(work: Workbook, overSeal: EnergyReleaseRate, toSteel: EnergyReleaseRate): void {
  warn(
    work,
    line(
      'The bond that was found over a seal, {0}, is tougher than that to bare steel, {1}, and the laminate over the leak is thinner for it: rest on it only where the tests were made over this putty, pad and sheet.',
      exactly('found over a seal', 'energy release rate', overSeal),
      exactly('bond to steel', 'energy release rate', toSteel),
    ),
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

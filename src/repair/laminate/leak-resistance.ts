import { decide, step } from '../../formula/index.js';
import { holeResistance, holeResistanceBeyondRigidRoot } from '../../laminate/index.js';
import type { EnergyReleaseRate, GaugePressure, Length, Modulus } from '../../quantity/index.js';
import type { AsFound } from '../design/design.js';
import { need, type Workbook, warn } from '../job/workbook.js';
import type { Strains } from '../limits/strains.js';
import { leakFactorOf } from './leak-factor.js';

/** Bond, moduli and factor behind the resistance over the hole. */
export interface LeakResistance {
  readonly holeDiameter: Length;
  readonly hoopModulus: Modulus;
  readonly axialModulus: Modulus;
  readonly poissonRatio: number;
  readonly shearModulus: Modulus;
  readonly energyReleaseRate: EnergyReleaseRate;
  readonly serviceFactor: number;
}

/** What the laminate over the hole is held by (ISO 24817, 7.5.7; PCC-2, Eq. 12 to 14). All that is missing is asked for. */
export function leakResistanceOf(work: Workbook, found: AsFound, strains: Strains): LeakResistance | undefined {
  const { laminate } = work.case;
  const overFiller = bondOverFiller(work);
  const energyReleaseRate =
    overFiller ??
    laminate.energyReleaseRate ??
    need(
      work,
      'laminate.energyReleaseRate',
      'the resistance of the laminate over a hole rests on the energy release rate of its bond, lower confidence limit',
      'the maker of the repair system: leak tests of the qualification',
    );
  const shearModulus =
    laminate.shearModulus ??
    need(
      work,
      'laminate.shearModulus',
      'the laminate over a hole gives way in shear',
      'the maker of the repair system: shear tests',
    );
  const holeDiameter = found.designHole;
  if (energyReleaseRate === undefined || shearModulus === undefined || holeDiameter === undefined) return undefined;
  return {
    holeDiameter,
    hoopModulus: laminate.hoopModulus,
    axialModulus: laminate.axialModulus,
    poissonRatio: laminate.poissonRatio,
    shearModulus,
    energyReleaseRate,
    serviceFactor: leakFactorOf(work, strains, energyReleaseRate, overFiller !== undefined),
  };
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

/** Pressure that a laid thickness resists over the hole. */
export function resistanceOverHole(work: Workbook, leak: LeakResistance, laminateThickness: Length): GaugePressure {
  const input = {
    laminateThickness,
    holeDiameter: leak.holeDiameter,
    hoopModulus: leak.hoopModulus,
    axialModulus: leak.axialModulus,
    poissonRatio: leak.poissonRatio,
    shearModulus: leak.shearModulus,
    energyReleaseRate: leak.energyReleaseRate,
    serviceFactor: leak.serviceFactor,
  };
  if (holeResistanceBeyondRigidRoot(input)) {
    warn(
      work,
      'The hole is more than three laminate thicknesses wide: the formula for the hole is up to 11 per cent optimistic there, unless the energy release rate was found with it on holes of like proportion.',
    );
  }
  return step(
    work.recorder,
    'laminate/hole-resistance',
    holeResistance,
    input,
    'pressure that the laid thickness resists over the hole',
  );
}

import { step } from '../../formula/index.js';
import { holeResistance, holeResistanceBeyondRigidRoot, ringResistance } from '../../laminate/index.js';
import type { EnergyReleaseRate, GaugePressure, Length, Modulus } from '../../quantity/index.js';
import type { Footprint } from '../design/design.js';
import { need, type Workbook, warn } from '../job/workbook.js';
import type { Strains } from '../limits/strains.js';
import { bondEnergyOf } from './bond-energy.js';
import { leakFactorOf } from './leak-factor.js';
import type { PlyModuli } from './ply-moduli.js';

/** Bond, moduli and factor behind the resistance over the hole, or over the seal on it. */
export interface LeakResistance {
  /** As a plate over a round hole: of the hole or of the unbonded circle. */
  readonly asPlate: boolean;
  /** As a ring that is bonded nowhere: over a seal only, since a bare hole goes by the equation of the rule set. */
  readonly asRing: boolean;
  readonly under: Footprint['under'];
  readonly outsideDiameter: Length;
  readonly holeDiameter: Length;
  readonly unbondedLength: Length;
  readonly hoopModulus: Modulus;
  readonly axialModulus: Modulus;
  readonly poissonRatio: number;
  readonly shearModulus: Modulus;
  readonly energyReleaseRate: EnergyReleaseRate;
  readonly serviceFactor: number;
}

/** What the laminate over the hole is held by (ISO 24817, 7.5.7; PCC-2, Eq. 12 to 14). All that is missing is asked for. */
export function leakResistanceOf(
  work: Workbook,
  outsideDiameter: Length,
  footprint: Footprint | undefined,
  strains: Strains,
  plies: PlyModuli,
): LeakResistance | undefined {
  const { laminate } = work.case;
  const bond = bondEnergyOf(work, footprint);
  const shearModulus =
    laminate.shearModulus ??
    need(
      work,
      'laminate.shearModulus',
      'the laminate over a hole gives way in shear',
      'the maker of the repair system: shear tests',
    );
  if (bond === undefined || shearModulus === undefined || footprint === undefined) return undefined;
  return {
    asPlate: footprint.bonded === 'beside it',
    asRing: footprint.under === 'seal',
    under: footprint.under,
    outsideDiameter,
    holeDiameter: footprint.diameter,
    unbondedLength: footprint.length,
    hoopModulus: plies.hoop,
    axialModulus: plies.axial,
    poissonRatio: laminate.poissonRatio,
    shearModulus,
    energyReleaseRate: bond.energy,
    serviceFactor: leakFactorOf(work, strains, bond),
  };
}

/** Pressure that a laid thickness resists over the hole or the seal: whichever of plate and ring releases less. */
export function resistanceOverHole(work: Workbook, leak: LeakResistance, laminateThickness: Length): GaugePressure {
  const asPlate = leak.asPlate ? resistanceAsPlate(work, leak, laminateThickness) : (0 as GaugePressure);
  const asRing = leak.asRing ? resistanceAsRing(work, leak, laminateThickness) : (0 as GaugePressure);
  if (asPlate > asRing && holeResistanceBeyondRigidRoot({ holeDiameter: leak.holeDiameter, laminateThickness })) {
    warn(
      work,
      `The ${leak.under} is more than three laminate thicknesses wide: the formula for the hole is up to 11 per cent optimistic there, unless the energy release rate was found with it on holes of like proportion.`,
    );
  }
  if (asPlate > asRing && leak.under === 'seal') {
    warn(
      work,
      'Over the seal the formula takes what is released as even along the rim. A laminate that is not as stiff along the pipe as round it, or soft in shear, releases up to 1.7 times as much at the sides of the rim: it may begin to peel there at a pressure up to 23 per cent below the one stated, unless the energy release rate was found with the formula over such a seal.',
    );
  }
  return Math.max(asPlate, asRing) as GaugePressure;
}

function resistanceAsPlate(work: Workbook, leak: LeakResistance, laminateThickness: Length): GaugePressure {
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
  const purpose = `pressure that the laid thickness resists over the ${leak.under}`;
  return step(work.recorder, 'laminate/hole-resistance', holeResistance, input, purpose);
}

function resistanceAsRing(work: Workbook, leak: LeakResistance, laminateThickness: Length): GaugePressure {
  const input = {
    laminateThickness,
    outsideDiameter: leak.outsideDiameter,
    unbondedLength: leak.unbondedLength,
    hoopModulus: leak.hoopModulus,
    energyReleaseRate: leak.energyReleaseRate,
    serviceFactor: leak.serviceFactor,
  };
  const purpose = 'pressure that the laid thickness resists as a ring that is bonded nowhere';
  return step(work.recorder, 'laminate/ring-resistance', ringResistance, input, purpose);
}

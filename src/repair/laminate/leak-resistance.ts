import { step } from '../../formula/index.js';
import { energyAtRim, holeResistance, holeResistanceBeyondRigidRoot, ringResistance } from '../../laminate/index.js';
import type { EnergyReleaseRate, GaugePressure, Length, Modulus } from '../../quantity/index.js';
import type { Slot } from '../case/case.js';
import type { LaminateCriterion } from '../design/criteria.js';
import type { Footprint } from '../design/design.js';
import { need, type Workbook, warn } from '../job/workbook.js';
import type { Strains } from '../limits/strains.js';
import { type BondEnergy, bondEnergyOf } from './bond-energy.js';
import { leakFactorOf } from './leak-factor.js';
import type { LeakResistance } from './leak-held.js';
import { resistanceOverSlot } from './leak-slot.js';
import type { PlyModuli } from './ply-moduli.js';
import { softStrip } from './soft-strip.js';

const STIFFEST = 'across the rim where the laminate is stiffest';

/** What the laminate over the hole is held by (ISO 24817, 7.5.7; PCC-2, Eq. 12 to 14). All that is missing is asked for. */
export function leakResistanceOf(
  work: Workbook,
  outsideDiameter: Length,
  footprint: Footprint | undefined,
  slot: Slot | undefined,
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
  const { under } = footprint;
  const energyOfPlate =
    under === 'seal' && bond.foundOver !== 'seal' ? atRim(work, plies, shearModulus, bond) : bond.energy;
  const asPlate = under !== 'slot' && footprint.bonded === 'beside it';
  const moduli = {
    hoopModulus: plies.hoop,
    axialModulus: plies.axial,
    poissonRatio: laminate.poissonRatio,
    shearModulus,
  };
  const stiffest = Math.max(plies.hoop, plies.axial) as Modulus;
  return {
    asPlate,
    overSlot: under === 'slot' ? slot : undefined,
    asRing: under === 'seal',
    under,
    outsideDiameter,
    holeDiameter: footprint.diameter,
    unbondedLength: footprint.length,
    ...moduli,
    energyReleaseRate: bond.energy,
    energyOfPlate,
    // The rim of a hole runs all round: its edge opens most where the laminate is stiffest across it.
    edgeFactor: asPlate ? softStrip(work, moduli, stiffest, STIFFEST).edgeFactor : 1,
    serviceFactor: leakFactorOf(work, strains, bond),
  };
}

/** What the leak is called in the lists of a design. */
export function leakCriterion({ overSlot }: LeakResistance): LaminateCriterion {
  return overSlot === undefined ? 'leak through the hole' : 'leak through the slot';
}

/** Over a seal the rim is wide, and an energy that was found on small holes says nothing of its worst place. */
function atRim(work: Workbook, plies: PlyModuli, shearModulus: Modulus, bond: BondEnergy): EnergyReleaseRate {
  return step(work.recorder, 'laminate/energy-at-rim', energyAtRim, {
    energyReleaseRate: bond.energy,
    hoopModulus: plies.hoop,
    axialModulus: plies.axial,
    poissonRatio: work.case.laminate.poissonRatio,
    shearModulus,
  });
}

/** Pressure that a laid thickness resists over the hole or the seal: whichever of plate and ring releases less. */
export function resistanceOverHole(work: Workbook, leak: LeakResistance, laminateThickness: Length): GaugePressure {
  if (leak.overSlot !== undefined) return resistanceOverSlot(work, leak, leak.overSlot, laminateThickness);
  const asPlate = leak.asPlate ? resistanceAsPlate(work, leak, laminateThickness) : (0 as GaugePressure);
  const asRing = leak.asRing ? resistanceAsRing(work, leak, laminateThickness) : (0 as GaugePressure);
  if (asPlate > asRing && holeResistanceBeyondRigidRoot({ holeDiameter: leak.holeDiameter, laminateThickness })) {
    warn(
      work,
      `The ${leak.under} is more than three laminate thicknesses wide: the formula for the hole is up to 13 per cent optimistic there, unless the energy release rate was found with it on holes of like proportion.`,
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
    energyReleaseRate: leak.energyOfPlate,
    serviceFactor: leak.serviceFactor,
    edgeFactor: leak.edgeFactor,
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

import { decide, heading, step } from '../../formula/index.js';
import { holePressureCeiling, ringPressureCeiling, thicknessHole, thicknessRing } from '../../laminate/index.js';
import { exactly, type GaugePressure, type Length, roundedDown } from '../../quantity/index.js';
import type { Slot } from '../case/case.js';
import type { Footprint } from '../design/design.js';
import type { Workbook } from '../job/workbook.js';
import type { Strains } from '../limits/strains.js';
import type { LeakResistance } from './leak-held.js';
import { leakResistanceOf } from './leak-resistance.js';
import { thicknessOverSlot } from './leak-slot.js';
import type { PlyModuli } from './ply-moduli.js';

export interface LeakOutcome {
  readonly thickness: Length;
  readonly resistance: LeakResistance;
}

/**
 * Thickness that keeps the pressure from peeling the laminate off the hole, or off the rim of the seal on it (ISO 24817,
 * 7.5.7; PCC-2, Eq. 12, over a hole; own form over a seal); a ceiling may forbid any thickness.
 */
export function thicknessForLeak(
  work: Workbook,
  outsideDiameter: Length,
  footprint: Footprint | undefined,
  slot: Slot | undefined,
  strains: Strains,
  plies: PlyModuli,
): LeakOutcome | undefined {
  heading(work.recorder, 'Thickness: leak through the hole');
  const resistance = leakResistanceOf(work, outsideDiameter, footprint, slot, strains, plies);
  if (resistance === undefined) return undefined;
  const { designPressure: pressure } = work.case.service;
  if (resistance.overSlot !== undefined) return overSlot(work, pressure, resistance, resistance.overSlot);
  const ceilingAsPlate = resistance.asPlate ? ceilingOfPlate(work, resistance) : (0 as GaugePressure);
  const ceilingAsRing = resistance.asRing ? ceilingOfRing(work, resistance) : (0 as GaugePressure);
  const ceiling = Math.max(ceilingAsPlate, ceilingAsRing) as GaugePressure;
  if (!(pressure < ceiling)) return refuseBond(work, ceiling, 'hole');
  if (!(pressure < ceilingAsPlate)) return { thickness: thicknessAsRing(work, pressure, resistance), resistance };
  const thickness = thicknessAsPlate(work, pressure, resistance);
  if (!(pressure < ceilingAsRing)) return { thickness, resistance };
  const asRing = thicknessAsRing(work, pressure, resistance);
  decide(
    work.recorder,
    `thickness of the ${asRing < thickness ? 'ring' : 'plate'}`,
    'less is released by it: bonded beside the seal, a laminate releases no more than a ring that is bonded nowhere',
  );
  return { thickness: Math.min(thickness, asRing) as Length, resistance };
}

function overSlot(
  work: Workbook,
  pressure: GaugePressure,
  resistance: LeakResistance,
  slot: Slot,
): LeakOutcome | undefined {
  const { thickness, ceiling } = thicknessOverSlot(work, pressure, resistance, slot);
  if (thickness !== undefined) return { thickness, resistance };
  return refuseBond(work, ceiling, 'slot');
}

function thicknessAsPlate(work: Workbook, pressure: GaugePressure, resistance: LeakResistance): Length {
  return step(work.recorder, 'laminate/thickness-hole', thicknessHole, {
    pressure,
    holeDiameter: resistance.holeDiameter,
    hoopModulus: resistance.hoopModulus,
    axialModulus: resistance.axialModulus,
    poissonRatio: resistance.poissonRatio,
    shearModulus: resistance.shearModulus,
    energyReleaseRate: resistance.energyOfPlate,
    serviceFactor: resistance.serviceFactor,
    edgeFactor: resistance.edgeFactor,
  });
}

function thicknessAsRing(work: Workbook, pressure: GaugePressure, resistance: LeakResistance): Length {
  return step(work.recorder, 'laminate/thickness-ring', thicknessRing, {
    pressure,
    outsideDiameter: resistance.outsideDiameter,
    unbondedLength: resistance.unbondedLength,
    hoopModulus: resistance.hoopModulus,
    energyReleaseRate: resistance.energyReleaseRate,
    serviceFactor: resistance.serviceFactor,
  });
}

function ceilingOfPlate(work: Workbook, resistance: LeakResistance): GaugePressure {
  return step(work.recorder, 'laminate/hole-pressure-ceiling', holePressureCeiling, {
    holeDiameter: resistance.holeDiameter,
    hoopModulus: resistance.hoopModulus,
    axialModulus: resistance.axialModulus,
    poissonRatio: resistance.poissonRatio,
    energyReleaseRate: resistance.energyOfPlate,
    serviceFactor: resistance.serviceFactor,
    edgeFactor: resistance.edgeFactor,
  });
}

function ceilingOfRing(work: Workbook, resistance: LeakResistance): GaugePressure {
  return step(work.recorder, 'laminate/ring-pressure-ceiling', ringPressureCeiling, {
    unbondedLength: resistance.unbondedLength,
    hoopModulus: resistance.hoopModulus,
    energyReleaseRate: resistance.energyReleaseRate,
    serviceFactor: resistance.serviceFactor,
  });
}

function refuseBond(work: Workbook, ceiling: GaugePressure, opening: 'hole' | 'slot'): undefined {
  work.reasons.push({
    text: `no thickness of this laminate holds the design pressure over this ${opening}: the bond itself gives way`,
    found: exactly('design pressure', 'gauge pressure', work.case.service.designPressure),
    limit: roundedDown(`ceiling of the bond over this ${opening}`, 'gauge pressure', ceiling),
  });
  return undefined;
}

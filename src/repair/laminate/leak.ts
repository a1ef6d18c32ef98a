import { decide, heading, step } from '../../formula/index.js';
import { holePressureCeiling, thicknessHole } from '../../laminate/index.js';
import { exactly, type Length, roundedDown } from '../../quantity/index.js';
import type { AsFound } from '../design/design.js';
import type { Workbook } from '../job/workbook.js';
import type { Strains } from '../limits/strains.js';
import { type LeakResistance, leakResistanceOf } from './leak-resistance.js';

export interface LeakOutcome {
  readonly thickness: Length;
  readonly resistance: LeakResistance;
}

/**
 * Thickness that keeps the pressure in the hole from peeling the laminate off (ISO 24817, 7.5.7; PCC-2, Eq. 12); a ceiling
 * may forbid any thickness.
 */
export function thicknessForLeak(work: Workbook, found: AsFound, strains: Strains): LeakOutcome | undefined {
  heading(work.recorder, 'Thickness: leak through the hole');
  const resistance = leakResistanceOf(work, found, strains);
  if (resistance === undefined || !staysBelowCeiling(work, resistance)) return undefined;
  const { designPressure: pressure } = work.case.service;
  if (pressure === 0) {
    decide(work.recorder, 'no thickness asked for by the leak', 'the design pressure is zero');
    return { thickness: 0 as Length, resistance };
  }
  const thickness = step(work.recorder, 'laminate/thickness-hole', thicknessHole, {
    pressure,
    holeDiameter: resistance.holeDiameter,
    hoopModulus: resistance.hoopModulus,
    axialModulus: resistance.axialModulus,
    poissonRatio: resistance.poissonRatio,
    shearModulus: resistance.shearModulus,
    energyReleaseRate: resistance.energyReleaseRate,
    serviceFactor: resistance.serviceFactor,
  });
  return { thickness, resistance };
}

function staysBelowCeiling(work: Workbook, resistance: LeakResistance): boolean {
  const { designPressure } = work.case.service;
  const ceiling = step(work.recorder, 'laminate/hole-pressure-ceiling', holePressureCeiling, resistance);
  if (designPressure < ceiling) return true;
  work.reasons.push({
    text: 'no thickness of this laminate holds the design pressure over this hole: the bond itself gives way',
    found: exactly('design pressure', 'gauge pressure', designPressure),
    limit: roundedDown('ceiling of the bond over this hole', 'gauge pressure', ceiling),
  });
  return false;
}

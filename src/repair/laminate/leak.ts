import { decide, heading, step } from '../../formula/index.js';
import {
  holePressureCeiling,
  holeResistance,
  holeResistanceBeyondRigidRoot,
  largestHole,
  leakServiceFactor,
  leakTemperatureFactor,
  serviceFactor,
  thicknessHole,
} from '../../laminate/index.js';
import type { EnergyReleaseRate, GaugePressure, Length, Modulus } from '../../quantity/index.js';
import type { AsFound } from '../design/design.js';
import { need, use, type Workbook, warn } from '../job/workbook.js';
import type { Strains } from '../limits/strains.js';

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

export interface LeakOutcome {
  readonly thickness: Length;
  readonly resistance: LeakResistance;
}

/** Thickness that keeps the pressure in the hole from peeling the laminate off; a ceiling may forbid any thickness. */
export function thicknessForLeak(work: Workbook, found: AsFound, strains: Strains): LeakOutcome | undefined {
  const { recorder, case: repairCase } = work;
  const { service, laminate } = repairCase;
  heading(recorder, 'Thickness: leak through the hole');
  const { shearModulus } = laminate;
  const overFiller = bondOverFiller(work);
  const energyReleaseRate = overFiller ?? laminate.energyReleaseRate;
  if (energyReleaseRate === undefined) {
    need(
      work,
      'laminate.energyReleaseRate',
      'the resistance of the laminate over a hole rests on the energy release rate of its bond, lower confidence limit',
      'the maker of the repair system: leak tests of the qualification',
    );
  }
  if (shearModulus === undefined) {
    need(
      work,
      'laminate.shearModulus',
      'the laminate over a hole gives way in shear',
      'the maker of the repair system: shear tests',
    );
  }
  const holeDiameter = found.designHole;
  if (energyReleaseRate === undefined || shearModulus === undefined || holeDiameter === undefined) return undefined;
  const resistance: LeakResistance = {
    holeDiameter,
    hoopModulus: laminate.hoopModulus,
    axialModulus: laminate.axialModulus,
    poissonRatio: laminate.poissonRatio,
    shearModulus,
    energyReleaseRate,
    serviceFactor: serviceFactorOf(work, strains, energyReleaseRate),
  };
  const ceiling = step(recorder, 'laminate/hole-pressure-ceiling', holePressureCeiling, resistance);
  if (service.designPressure >= ceiling) {
    work.reasons.push({
      text: 'no thickness of this laminate holds the design pressure over this hole: the bond itself gives way',
      found: { name: 'design pressure', kind: 'gauge pressure', value: service.designPressure },
      limit: { name: 'ceiling of the bond over this hole', kind: 'gauge pressure', value: ceiling },
    });
    return undefined;
  }
  if (service.designPressure === 0) {
    decide(recorder, 'no thickness asked for by the leak', 'the design pressure is zero');
    return { thickness: 0 as Length, resistance };
  }
  return {
    thickness: step(recorder, 'laminate/thickness-hole', thicknessHole, {
      ...resistance,
      pressure: service.designPressure,
    }),
    resistance,
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

/** The formula holds for a hole that is small beside the pipe and the laminate: the thinner of wall and laminate decides. */
export function checkHoleSize(work: Workbook, found: AsFound, laid: Length): void {
  const { recorder, rules, case: repairCase } = work;
  const { designHole: holeDiameter, outsideDiameter } = found;
  if (holeDiameter === undefined) return;
  const largest = step(recorder, 'laminate/largest-hole', largestHole, {
    outsideDiameter,
    thickness: Math.min(repairCase.pipe.wallThickness, laid) as Length,
    coefficient: use(work, 'largest hole that counts as small', rules.hole.validity),
  });
  if (holeDiameter <= largest) return;
  work.notCovered.push({
    text: 'the hole is too large for the formula of a round hole',
    found: { name: 'hole diameter', kind: 'length', value: holeDiameter },
    limit: { name: 'largest hole', kind: 'length', value: largest },
    clause: rules.hole.validity.clause,
  });
}

function serviceFactorOf(work: Workbook, strains: Strains, reference: EnergyReleaseRate): number {
  const { recorder, rules, case: repairCase } = work;
  const { repair } = repairCase;
  const option = rules.leakFactorOption[repair.class];
  const byFormula = repair.leakFactorByFormula === true && option.value !== null;
  if (byFormula) {
    warn(
      work,
      'The leak service factor is taken by formula, as the case asks, instead of the fixed value: less conservative.',
      option.clause,
    );
  }
  const rule = byFormula ? { ...option, value: option.value } : rules.leakFactor[repair.class];
  const { firstYear, decay } = use(work, `leak service factor of class ${repair.class}`, rule);
  const fLeak = step(recorder, 'laminate/leak-service-factor', leakServiceFactor, {
    designLife: repair.life,
    firstYear,
    decay,
    longestLife: rules.longestLife.value,
  });
  const fT = temperatureFactorOf(work, strains, reference);
  return step(recorder, 'laminate/service-factor', serviceFactor, {
    leakFactor: fLeak,
    temperatureFactor: fT,
    cyclicFactor: strains.cyclicFactor,
  });
}

/** f_T2 is not known: by mechanics where the case gives the values at the design temperature, else f_T1 with a warning. */
function temperatureFactorOf(work: Workbook, strains: Strains, reference: EnergyReleaseRate): number {
  const { laminate } = work.case;
  const hot = laminate.atDesignTemperature;
  if (hot === undefined) {
    warn(
      work,
      'The temperature factor of the leak resistance is not known: the factor of the strain is taken in its place. Give the energy release rate and the moduli at the design temperature to replace it.',
      work.rules.leakTemperatureFactor.clause,
    );
    return strains.temperatureFactor;
  }
  const plate = (hoop: Modulus, axial: Modulus): Modulus => Math.sqrt(hoop * axial) as Modulus;
  if (bondOverFiller(work) !== undefined) {
    warn(
      work,
      'The energy release rate at the design temperature is that of the bond to steel: over filler the factor of the strain is taken.',
    );
    return strains.temperatureFactor;
  }
  const factor = step(work.recorder, 'laminate/leak-temperature-factor', leakTemperatureFactor, {
    energyAtDesignTemperature: hot.energyReleaseRate,
    energyAtTestTemperature: reference,
    modulusAtDesignTemperature: plate(hot.hoopModulus, hot.axialModulus),
    modulusAtTestTemperature: plate(laminate.hoopModulus, laminate.axialModulus),
  });
  if (factor <= 1) return factor;
  decide(work.recorder, 'temperature factor of the leak held at 1', 'a bond that is tougher when warm earns no credit');
  return 1;
}

/** Pressure that a laid thickness resists over the hole. */
export function resistanceOverHole(
  work: Workbook,
  resistance: LeakResistance,
  laminateThickness: Length,
): GaugePressure {
  const input = { ...resistance, laminateThickness };
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

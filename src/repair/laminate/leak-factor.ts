import { step } from '../../formula/index.js';
import { leakServiceFactor, leakTemperatureFactor, meanModulus, serviceFactor } from '../../laminate/index.js';
import type { EnergyReleaseRate } from '../../quantity/index.js';
import { use, type Workbook, warn, warnOwner } from '../job/workbook.js';
import type { Strains } from '../limits/strains.js';
import type { BondEnergy } from './bond-energy.js';

/** Factor on the resistance over the hole: class and life, temperature, cycles (ISO 24817, 7.5.7). */
export function leakFactorOf(work: Workbook, strains: Strains, bond: BondEnergy): number {
  const leakFactor = factorOfLife(work);
  return step(work.recorder, 'laminate/service-factor', serviceFactor, {
    leakFactor,
    temperatureFactor: factorOfTemperature(work, strains, bond),
    cyclicFactor: strains.cyclicFactor,
  });
}

/** f_leak: the fixed value of the class, or the less conservative formula where the case asks for it. */
function factorOfLife(work: Workbook): number {
  const { recorder, rules, case: repairCase } = work;
  const { class: repairClass, life: designLife, leakFactorByFormula } = repairCase.repair;
  const name = `leak service factor of class ${repairClass}`;
  const fixed = rules.leakFactor[repairClass];
  const option = rules.leakFactorOption[repairClass];
  const asked = leakFactorByFormula === true && option.value !== null;
  if (asked) {
    warnOwner(
      work,
      'The leak service factor is taken by formula, as the case asks, instead of the fixed value: less conservative.',
      option.clause,
    );
  }
  const { firstYear, decay } = (asked ? use(work, name, option) : null) ?? use(work, name, fixed);
  const longestLife = rules.longestLife.value;
  const course = { designLife, firstYear, decay, longestLife };
  return step(recorder, 'laminate/leak-service-factor', leakServiceFactor, course);
}

/** f_T2 is not known: by mechanics where the case gives the values at the design temperature, else f_T1 with a warning. */
function factorOfTemperature(work: Workbook, strains: Strains, { energy, foundOver, toSteel }: BondEnergy): number {
  const { recorder, rules, case: repairCase } = work;
  const { hoopModulus, axialModulus, atDesignTemperature: hot } = repairCase.laminate;
  if (hot === undefined) {
    warn(
      work,
      'The temperature factor of the leak resistance is not known: the factor of the strain is taken in its place. Give the energy release rate and the moduli at the design temperature to replace it.',
      rules.leakTemperatureFactor.clause,
    );
    return strains.temperatureFactor;
  }
  if (foundOver === 'filler') {
    warn(
      work,
      'The energy release rate at the design temperature is that of the bond to steel: over filler the factor of the strain is taken.',
    );
    return strains.temperatureFactor;
  }
  const warm = { hoopModulus: hot.hoopModulus, axialModulus: hot.axialModulus };
  const tested = { hoopModulus, axialModulus };
  return step(recorder, 'laminate/leak-temperature-factor', leakTemperatureFactor, {
    energyAtDesignTemperature: hot.energyReleaseRate,
    // Over a seal the tougher of the two: its warm value is not known, and must not come out tougher than that of steel.
    energyAtTestTemperature: Math.max(energy, toSteel ?? energy) as EnergyReleaseRate,
    modulusAtDesignTemperature: step(recorder, 'laminate/mean-modulus', meanModulus, warm, 'at the design temperature'),
    modulusAtTestTemperature: step(recorder, 'laminate/mean-modulus', meanModulus, tested, 'of the tests'),
  });
}

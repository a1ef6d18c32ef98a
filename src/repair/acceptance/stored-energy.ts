import {
  gasEnergyIsentropic,
  liquidTestEnergy,
  testDistance,
  testDistanceEnergyAboveRule,
  tntEquivalent,
} from '../../acceptance/index.js';
import { step } from '../../formula/index.js';
import { insideDiameter } from '../../pipe/index.js';
import { type Energy, type GaugePressure, toAbsolute, type Volume } from '../../quantity/index.js';
import { practice } from '../../rules/index.js';
import type { PressureTest } from '../case/case.js';
import type { AsFound } from '../design/design.js';
import type { PressureTestDesign } from '../design/design-work.js';
import { pipeModulus } from '../found/pipe-modulus.js';
import { assume, assumeWord, type Workbook, warnCrew } from '../job/workbook.js';

/** What the gas of a test gives off when the line parts, and how far people stay away. */
export function gasEnergy(
  work: Workbook,
  { atmosphere }: PressureTest,
  pressure: GaugePressure,
  volume: Volume,
): Pick<PressureTestDesign, 'storedEnergy' | 'tntEquivalent' | 'distance'> {
  const { recorder } = work;
  assumeWord(work, 'gas of the pressure test', 'air or nitrogen', 'secondary', 'the case names no gas');
  const energy = step(recorder, 'acceptance/gas-energy-isentropic', gasEnergyIsentropic, {
    pressure: toAbsolute(pressure, atmosphere),
    volume,
    atmosphere,
    heatCapacityRatio: assume(work, undefined, practice.heatCapacityRatioOfTestGas),
  });
  const distance = step(recorder, 'acceptance/test-distance', testDistance, { energy });
  if (testDistanceEnergyAboveRule({ energy })) {
    warnCrew(
      work,
      'pressure-test',
      'The gas of the pressure test stores more energy than the rule for the distance covers: study it first.',
    );
  }
  warnCrew(
    work,
    'pressure-test',
    'A test with gas stores far more energy than one with liquid: test with liquid wherever that can be done.',
  );
  if (work.case.service.hazards.includes('flammable')) {
    warnCrew(
      work,
      'pressure-test',
      'The contents are flammable: test and purge with nitrogen or another inert gas, never with air, whose pressure on what is left in the line explodes. Measure the oxygen in the line before the pressure is raised. Inert gas that is let off takes the air away: keep people clear of the vent, out of pits and closed rooms.',
    );
  }
  return {
    storedEnergy: energy,
    tntEquivalent: step(recorder, 'acceptance/tnt-equivalent', tntEquivalent, { energy }),
    distance,
  };
}

/** What a line full of liquid gives off, of the liquid and of the stretched wall; air in it makes it far more. */
export function liquidEnergy(
  work: Workbook,
  { outsideDiameter }: AsFound,
  pressure: GaugePressure,
  volume: Volume,
): Energy {
  const { wallThickness } = work.case.pipe;
  const bore = step(work.recorder, 'pipe/inside-diameter', insideDiameter, { outsideDiameter, wallThickness });
  return step(work.recorder, 'acceptance/liquid-test-energy', liquidTestEnergy, {
    pressure,
    volume,
    insideDiameter: bore,
    wallThickness,
    modulus: pipeModulus(work),
  }).total;
}

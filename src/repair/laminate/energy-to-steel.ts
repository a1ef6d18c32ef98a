import { step } from '../../formula/index.js';
import { energyFromTests } from '../../laminate/index.js';
import type { EnergyReleaseRate } from '../../quantity/index.js';
import { attempt, type Workbook } from '../job/workbook.js';

/**
 * Energy release rate of the bond to the prepared pipe, lower confidence limit: as the maker states it, or from the maker's tests
 * of pressurised holes, with the moduli of the case and the equation that the design is held to.
 */
export function energyToSteel(work: Workbook): EnergyReleaseRate | undefined {
  const { energyReleaseRate, holeTests, shearModulus, hoopModulus, axialModulus, poissonRatio } = work.case.laminate;
  // Without a shear modulus no test can be read: it is asked for beside the energy.
  if (holeTests === undefined || shearModulus === undefined) return energyReleaseRate;
  return attempt(work, 'energy release rate from tests of holes', () => {
    const found = step(work.recorder, 'laminate/energy-from-tests', energyFromTests, {
      tests: holeTests,
      hoopModulus,
      axialModulus,
      poissonRatio,
      shearModulus,
    });
    return found.lowerLimit;
  });
}

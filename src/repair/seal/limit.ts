import { step } from '../../formula/index.js';
import type { Force, GaugePressure, Length } from '../../quantity/index.js';
import { practice } from '../../rules/index.js';
import {
  assuredTension,
  backingPlatePressure,
  type HighestSealPressure,
  highestPressure,
  linePressureOfTension,
  pipeUnderBand,
  strapCapacity,
  tensionFromContactPressure,
} from '../../seal/index.js';
import type { Seal } from '../case/case.js';
import type { AsFound } from '../design/design.js';
import { pipeModulus } from '../found/pipe-modulus.js';
import type { Workbook } from '../job/workbook.js';
import type { PadPart } from './pad.js';

/** The highest line pressure of the site, the strap, the fastener, the sheet and the thinned pipe, and which is lowest. */
export function limitPressure(
  work: Workbook,
  seal: Seal,
  found: AsFound,
  pad: PadPart,
  wall: Length,
  opening: Length,
): HighestSealPressure {
  const { recorder, case: repairCase } = work;
  const { band, fastener, sheet } = seal;
  const asPressure = (tensionLimit: Force, what: string): GaugePressure =>
    step(
      recorder,
      'seal/line-pressure-of-tension',
      linePressureOfTension,
      {
        fastenerTension: step(
          recorder,
          'seal/assured-tension',
          assuredTension,
          { tensionLimit, scatter: fastener.scatter },
          what,
        ),
        halfAngle: pad.halfAngle,
        padArea: pad.padArea,
        factor: band.holdingFactor,
        friction: band.friction,
        bands: pad.bands,
      },
      what,
    );
  const strap = step(recorder, 'seal/strap-capacity', strapCapacity, {
    strength: band.strength,
    bandWidth: band.width,
    bandThickness: band.thickness,
    factor: band.factor,
  });
  const ring = step(recorder, 'seal/pipe-under-band', pipeUnderBand, {
    outsideDiameter: found.outsideDiameter,
    wallThickness: wall,
    modulus: pipeModulus(work),
    poissonRatio: practice.poissonRatioOfSteel.value,
    yieldStrength: repairCase.pipe.material.yieldStrength,
    factor: seal.pipeFactor,
  });
  const pipeTension = step(recorder, 'seal/tension-from-contact-pressure', tensionFromContactPressure, {
    pressure: ring.pressure,
    diameter: found.outsideDiameter,
    bandWidth: band.width,
  });
  return step(recorder, 'seal/highest-pressure', highestPressure, {
    siteLimit: seal.siteLimit,
    strapLimit: asPressure(strap, 'strap'),
    fastenerLimit: asPressure(fastener.permittedTension, 'fastener'),
    sheetLimit: step(recorder, 'seal/backing-plate-pressure', backingPlatePressure, {
      holeDiameter: opening,
      thickness: sheet.thickness,
      strength: sheet.yieldStrength,
      factor: sheet.factor,
      support: sheet.support,
      poissonRatio: sheet.poissonRatio,
    }),
    pipeLimit: asPressure(pipeTension, 'thinned pipe under the band'),
  });
}

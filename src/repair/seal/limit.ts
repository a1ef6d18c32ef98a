import { step } from '../../formula/index.js';
import type { Force, GaugePressure, Length } from '../../quantity/index.js';
import { practice } from '../../rules/index.js';
import {
  assuredTension,
  backingPlatePressure,
  type HighestSealPressure,
  highestPressure,
  linePressureOfTension,
  padBeyondBands,
  pipeUnderBand,
  sheetOverhangPressure,
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
  const { band, fastener } = seal;
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
    sheetLimit: sheetLimitOf(work, seal, pad, opening),
    pipeLimit: asPressure(pipeTension, 'thinned pipe under the band'),
  });
}

/** The sheet bends into the opening, and where the bands are narrower than the pad, outwards beside them. */
function sheetLimitOf({ recorder }: Workbook, { band, sheet }: Seal, pad: PadPart, opening: Length): GaugePressure {
  const overHole = step(recorder, 'seal/backing-plate-pressure', backingPlatePressure, {
    holeDiameter: opening,
    thickness: sheet.thickness,
    strength: sheet.yieldStrength,
    factor: sheet.factor,
    support: sheet.support,
    poissonRatio: sheet.poissonRatio,
  });
  const across = { bands: band.count, bandWidth: band.width, padDiameter: pad.padDiameter };
  const overhang = step(recorder, 'seal/pad-beyond-bands', padBeyondBands, across);
  if (overhang === 0) return overHole;
  const besideBands = step(recorder, 'seal/sheet-overhang-pressure', sheetOverhangPressure, {
    overhang,
    thickness: sheet.thickness,
    strength: sheet.yieldStrength,
    factor: sheet.factor,
  });
  return Math.min(overHole, besideBands) as GaugePressure;
}

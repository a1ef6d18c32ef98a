import { heading, step } from '../formula/index.js';
import type { Force, GaugePressure, Length, Ratio } from '../quantity/index.js';
import {
  assuredTension,
  backingPlatePressure,
  backingSheet,
  bandLength,
  bandTension,
  circleArea,
  contactPressure,
  endLoad,
  fastenerTension,
  fastenerTorque,
  highestSealPressure,
  leakForce,
  linePressureOfTension,
  padBelowPractice,
  padHalfAngle,
  padSize,
  pipeBelowBandPractice,
  pipeUnderBand,
  sealAttempt,
  sheetOutsidePractice,
  strapCapacity,
  strapStress,
  tensionFromContactPressure,
  tensionFromTorque,
} from '../seal/index.js';
import type { Seal } from './case.js';
import type { AsFound } from './design.js';
import type { SealDesign } from './design-work.js';
import { describeJet } from './jet-stage.js';
import { pipeModulus } from './pipe-modulus.js';
import { attempt, need, type Workbook, warn } from './workbook.js';

/** Poisson's ratio of steel, for the ring under the band. */
const STEEL_POISSON = 0.3;

/** How the leak is held before the wrap, and up to which line pressure that may be tried. */
export function planSeal(work: Workbook, found: AsFound): SealDesign | undefined {
  heading(work.recorder, 'Leak seal');
  const { seal, defect, service } = work.case;
  if (seal === undefined) {
    warn(
      work,
      'The case does not say how the leak is held: the line has to be empty, dry and isolated before the surface is prepared.',
    );
    return undefined;
  }
  const { holeDiameter } = defect;
  if (holeDiameter === undefined) return undefined;
  if (defect.remainingWall === 0) {
    return need(
      work,
      'defect.remainingWall',
      'the band presses on the thinned pipe: the least wall round the hole decides how hard',
      'the inspector at the pipe',
    );
  }
  return attempt(work, 'leak seal', () => {
    const pad = sizePad(work, seal, found, holeDiameter);
    const clamp = clampPad(work, seal, found, pad);
    const limit = limitPressure(work, seal, found, pad);
    const answer = step(work.recorder, sealAttempt, {
      linePressure: seal.linePressure,
      highestPressure: limit.pressure,
      phase: service.phase,
      hazardous: service.hazards.length > 0,
      writtenProcedure: seal.writtenProcedure !== 'none',
    });
    if (answer.pressureTooHigh) {
      work.reasons.push({
        text: `the leak may not be sealed at this line pressure (limited by the ${limit.governing}): lower the pressure first`,
        found: { name: 'line pressure', kind: 'gauge pressure', value: seal.linePressure },
        limit: { name: 'highest line pressure for the seal', kind: 'gauge pressure', value: limit.pressure },
      });
    }
    if (answer.procedureMissing) {
      work.reasons.push({
        text: 'the contents are gas or hazardous, and the case names no written procedure of the site for sealing this leak',
      });
    }
    const endForce = step(work.recorder, endLoad, {
      pressure: service.designPressure,
      outsideDiameter: found.outsideDiameter,
    });
    const jet = describeJet(work, seal, holeDiameter);
    const { halfAngle: _, ...padded } = pad;
    return {
      ...padded,
      ...clamp,
      highestPressure: limit.pressure,
      limitedBy: limit.governing,
      endLoadNotCarried: endForce,
      ...(jet === undefined ? {} : { jet }),
    };
  });
}

type PadPart = Pick<SealDesign, 'padDiameter' | 'padGovernedBy'> & {
  readonly halfAngle: ReturnType<typeof padHalfAngle>;
};

function sizePad(work: Workbook, seal: Seal, found: AsFound, holeDiameter: Length): PadPart {
  const { recorder } = work;
  const input = { holeDiameter, ...seal.pad };
  const pad = step(recorder, padSize, input);
  if (padBelowPractice(input))
    warn(
      work,
      'The pad is smaller than the trade makes it: three times the size of the hole and 25 mm beyond it on every side.',
    );
  const half = { padDiameter: pad.diameter, outsideDiameter: found.outsideDiameter };
  if (pipeBelowBandPractice(half)) warn(work, 'The pipe is smaller than banded seals are used on (50 mm).');
  return { padDiameter: pad.diameter, padGovernedBy: pad.governing, halfAngle: step(recorder, padHalfAngle, half) };
}

type ClampPart = Omit<
  SealDesign,
  'padDiameter' | 'padGovernedBy' | 'highestPressure' | 'limitedBy' | 'endLoadNotCarried' | 'jet'
>;

function clampPad(work: Workbook, seal: Seal, found: AsFound, pad: PadPart): ClampPart {
  const { recorder } = work;
  const { band, fastener, sheet } = seal;
  const { outsideDiameter } = found;
  const force = step(recorder, leakForce, {
    pressure: seal.linePressure,
    holeArea: step(recorder, circleArea, { diameter: work.case.defect.holeDiameter as Length }, 'hole'),
    padArea: step(recorder, circleArea, { diameter: pad.padDiameter }, 'pad'),
  });
  const tensionAtPad = step(recorder, bandTension, {
    force: force.onPad,
    halfAngle: pad.halfAngle,
    factor: band.holdingFactor,
    bands: band.count,
  });
  const { thickness, modulus, yieldStrength } = sheet;
  const bent = { thickness, modulus, yieldStrength, diameter: outsideDiameter };
  const { forming } = step(recorder, backingSheet, bent);
  if (sheetOutsidePractice(bent)) {
    warn(work, 'The backing sheet is thinner or thicker than the trade uses (0.3 to 0.4 mm of stainless steel).');
  }
  const length = step(recorder, bandLength, {
    circumference: (Math.PI * outsideDiameter) as Length,
    buildUp: sheet.thickness,
    bandThickness: band.thickness,
    overlap: band.overlap,
  });
  const base = { forceOnPad: force.onPad, forceOnHole: force.onHole, forming, bandLength: length };
  if (tensionAtPad === 0) return base;
  const needed = step(recorder, fastenerTension, { padTension: tensionAtPad, friction: band.friction });
  // The torque whose low end of scatter still gives the tension; stresses are taken at its high end.
  const aim = (needed / (1 - fastener.scatter)) as Force;
  const torque = step(recorder, fastenerTorque, {
    tension: aim,
    nutFactor: fastener.nutFactor,
    threadDiameter: fastener.threadDiameter,
  });
  const spread = step(recorder, tensionFromTorque, {
    torque,
    nutFactor: fastener.nutFactor,
    threadDiameter: fastener.threadDiameter,
    scatter: fastener.scatter,
  });
  return {
    ...base,
    fastenerTension: needed,
    torque,
    strapStress: step(recorder, strapStress, {
      tension: spread.high,
      bandWidth: band.width,
      bandThickness: band.thickness,
    }),
    contactPressure: step(recorder, contactPressure, {
      tension: spread.high,
      diameter: outsideDiameter,
      bandWidth: band.width,
    }),
  };
}

function limitPressure(
  work: Workbook,
  seal: Seal,
  found: AsFound,
  pad: PadPart,
): ReturnType<typeof highestSealPressure> {
  const { recorder, case: repairCase } = work;
  const { band, fastener, sheet } = seal;
  const padArea = step(recorder, circleArea, { diameter: pad.padDiameter }, 'pad');
  const asPressure = (tensionLimit: Force, what: string): GaugePressure =>
    step(
      recorder,
      linePressureOfTension,
      {
        fastenerTension: step(recorder, assuredTension, { tensionLimit, scatter: fastener.scatter as Ratio }, what),
        halfAngle: pad.halfAngle,
        padArea,
        factor: band.holdingFactor,
        friction: band.friction,
        bands: band.count,
      },
      what,
    );
  const strap = step(recorder, strapCapacity, {
    strength: band.strength,
    bandWidth: band.width,
    bandThickness: band.thickness,
    factor: band.factor,
  });
  const { remainingWall } = repairCase.defect;
  const ring = step(recorder, pipeUnderBand, {
    outsideDiameter: found.outsideDiameter,
    wallThickness: remainingWall,
    modulus: pipeModulus(work),
    poissonRatio: STEEL_POISSON,
    yieldStrength: repairCase.pipe.material.yieldStrength,
    factor: seal.pipeFactor,
  });
  const pipeTension = step(recorder, tensionFromContactPressure, {
    pressure: ring.pressure,
    diameter: found.outsideDiameter,
    bandWidth: band.width,
  });
  return step(recorder, highestSealPressure, {
    siteLimit: seal.siteLimit,
    strapLimit: asPressure(strap, 'strap'),
    fastenerLimit: asPressure(fastener.permittedTension, 'fastener'),
    sheetLimit: step(recorder, backingPlatePressure, {
      holeDiameter: repairCase.defect.holeDiameter as Length,
      thickness: sheet.thickness,
      strength: sheet.yieldStrength,
      factor: sheet.factor,
      support: sheet.support,
      poissonRatio: sheet.poissonRatio,
    }),
    pipeLimit: asPressure(pipeTension, 'thinned pipe under the band'),
  });
}

import { heading, step } from '../formula/index.js';
import type { Force, Length } from '../quantity/index.js';
import {
  attempt,
  backingSheet,
  backingSheetOutsidePractice,
  bandLength,
  bandTension,
  contactPressure,
  endLoad,
  fastenerTension,
  fastenerTorque,
  leakForce,
  strapStress,
  tensionFromTorque,
} from '../seal/index.js';
import type { Seal } from './case.js';
import type { AsFound } from './design.js';
import type { SealDesign } from './design-work.js';
import { describeJet } from './jet-stage.js';
import { limitPressure } from './seal-limit.js';
import { type PadPart, sizePad } from './seal-pad.js';
import { need, type Workbook, warn } from './workbook.js';

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
  const pad = sizePad(work, seal, found, holeDiameter);
  const clamp = clampPad(work, seal, found, pad);
  const limit = limitPressure(work, seal, found, pad);
  const answer = step(work.recorder, attempt, {
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
  const jet = describeJet(work, seal, pad.holeArea);
  return {
    padDiameter: pad.padDiameter,
    padGovernedBy: pad.padGovernedBy,
    ...clamp,
    highestPressure: limit.pressure,
    limitedBy: limit.governing,
    endLoadNotCarried: endForce,
    ...(jet === undefined ? {} : { jet }),
  };
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
    holeArea: pad.holeArea,
    padArea: pad.padArea,
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
  if (backingSheetOutsidePractice(bent)) {
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

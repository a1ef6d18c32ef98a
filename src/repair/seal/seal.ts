import { heading, step } from '../../formula/index.js';
import type { Force, GaugePressure, Length } from '../../quantity/index.js';
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
} from '../../seal/index.js';
import type { Seal } from '../case/case.js';
import type { AsFound } from '../design/design.js';
import type { SealDesign } from '../design/design-work.js';
import { pressureAtWork } from '../found/pressure-at-work.js';
import { type Open, open } from '../job/stage.js';
import { need, type Workbook, warn } from '../job/workbook.js';
import { describeJet } from './jet.js';
import { limitPressure } from './limit.js';
import { type PadPart, sizePad } from './pad.js';

/** How the leak is held before the wrap, and up to which line pressure that may be tried. */
export function planSeal(work: Workbook, { found }: { found: AsFound }): SealDesign | 'none' | Open {
  const { seal, defect, service, line } = work.case;
  if (!found.throughWall) return 'none';
  heading(work.recorder, 'Leak seal');
  const linePressure = pressureAtWork(line);
  if (seal === undefined) {
    if (linePressure === 0 || defect.kind !== 'through-wall hole') return 'none';
    need(
      work,
      'seal',
      'the pipe leaks and the line stays under pressure while people work on it: nothing says how the leak is held; state the seal, or empty the line',
      'whoever seals the leak',
    );
    return open;
  }
  const { holeDiameter } = defect;
  if (holeDiameter === undefined) return 'none';
  if (defect.remainingWall === 0) {
    need(
      work,
      'defect.remainingWall',
      'the band presses on the thinned pipe: the least wall round the hole decides how hard',
      'the inspector at the pipe',
    );
    return open;
  }
  const pad = sizePad(work, seal, found, holeDiameter);
  const clamp = clampPad(work, seal, found, pad, linePressure);
  const limit = limitPressure(work, seal, found, pad);
  const answer = step(work.recorder, 'seal/attempt', attempt, {
    linePressure,
    highestPressure: limit.pressure,
    phase: service.phase,
    hazardous: service.hazards.length > 0,
    writtenProcedure: line.state !== 'empty, dry, isolated, vented' && line.writtenProcedure !== 'none',
  });
  if (answer.pressureTooHigh) {
    work.reasons.push({
      text: `the leak may not be sealed at this line pressure (limited by the ${limit.governing}): lower the pressure first`,
      found: { name: 'line pressure', kind: 'gauge pressure', value: linePressure },
      limit: { name: 'highest line pressure for the seal', kind: 'gauge pressure', value: limit.pressure },
    });
  }
  const endForce = step(work.recorder, 'seal/end-load', endLoad, {
    pressure: service.designPressure,
    outsideDiameter: found.outsideDiameter,
  });
  const jet = describeJet(work, seal, pad.holeArea, linePressure);
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

function clampPad(work: Workbook, seal: Seal, found: AsFound, pad: PadPart, pressure: GaugePressure): ClampPart {
  const { recorder } = work;
  const { band, fastener, sheet } = seal;
  const { outsideDiameter } = found;
  const force = step(recorder, 'seal/leak-force', leakForce, {
    pressure,
    holeArea: pad.holeArea,
    padArea: pad.padArea,
  });
  const tensionAtPad = step(recorder, 'seal/band-tension', bandTension, {
    force: force.onPad,
    halfAngle: pad.halfAngle,
    factor: band.holdingFactor,
    bands: band.count,
  });
  const { thickness, modulus, yieldStrength } = sheet;
  const bent = { thickness, modulus, yieldStrength, diameter: outsideDiameter };
  const { forming } = step(recorder, 'seal/backing-sheet', backingSheet, bent);
  if (backingSheetOutsidePractice(bent)) {
    warn(work, 'The backing sheet is thinner or thicker than the trade uses (0.3 to 0.4 mm of stainless steel).');
  }
  const length = step(recorder, 'seal/band-length', bandLength, {
    circumference: (Math.PI * outsideDiameter) as Length,
    buildUp: sheet.thickness,
    bandThickness: band.thickness,
    overlap: band.overlap,
  });
  const base = { forceOnPad: force.onPad, forceOnHole: force.onHole, forming, bandLength: length };
  if (tensionAtPad === 0) return base;
  const needed = step(recorder, 'seal/fastener-tension', fastenerTension, {
    padTension: tensionAtPad,
    friction: band.friction,
  });
  // The torque whose low end of scatter still gives the tension; stresses are taken at its high end.
  const aim = (needed / (1 - fastener.scatter)) as Force;
  const torque = step(recorder, 'seal/fastener-torque', fastenerTorque, {
    tension: aim,
    nutFactor: fastener.nutFactor,
    threadDiameter: fastener.threadDiameter,
  });
  const spread = step(recorder, 'seal/tension-from-torque', tensionFromTorque, {
    torque,
    nutFactor: fastener.nutFactor,
    threadDiameter: fastener.threadDiameter,
    scatter: fastener.scatter,
  });
  return {
    ...base,
    fastenerTension: needed,
    torque,
    strapStress: step(recorder, 'seal/strap-stress', strapStress, {
      tension: spread.high,
      bandWidth: band.width,
      bandThickness: band.thickness,
    }),
    contactPressure: step(recorder, 'seal/contact-pressure', contactPressure, {
      tension: spread.high,
      diameter: outsideDiameter,
      bandWidth: band.width,
    }),
  };
}

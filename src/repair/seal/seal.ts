import { decide, heading, step } from '../../formula/index.js';
import { line, roundedDown, roundedUp } from '../../quantity/index.js';
import { practice } from '../../rules/index.js';
import { attempt, endLoad, type HighestSealPressure } from '../../seal/index.js';
import { namesDocument } from '../case/says-nothing.js';
import type { AsFound } from '../design/design.js';
import type { SealDesign } from '../design/design-work.js';
import { forceOnSide } from '../found/external-force.js';
import { leaksToday, openingToday } from '../found/opening.js';
import { pressureAtWork } from '../found/pressure-at-work.js';
import { type Open, open } from '../job/stage.js';
import { need, type Workbook, warnCrew } from '../job/workbook.js';
import { checkByHand } from './by-hand.js';
import { type Clamp, clampPad } from './clamp.js';
import { warnOfSealFactors } from './factors.js';
import { describeJet } from './jet.js';
import { limitPressure } from './limit.js';
import { sizePad } from './pad.js';

/** The jet is held by hand; once the putty closes round it, the pressure comes under all of the pad. */
function warnOfPad(work: Workbook, { forceOnPad }: Clamp): void {
  if (forceOnPad <= practice.largestJetByHand.value) return;
  warnCrew(
    work,
    'seal',
    line(
      'Once the putty closes, the line lifts the pad with {0}, more than hands hold down: the band lies round the pipe before the pad goes on, and takes the force at once. Nobody leans over it.',
      roundedUp('force on the pad', 'force', forceOnPad),
    ),
  );
}

/** How the leak is held before the wrap, and up to which line pressure that may be tried. */
export function planSeal(work: Workbook, { found }: { found: AsFound }): SealDesign | 'none' | Open {
  const { seal, defect, service, line: atWork } = work.case;
  if (!found.throughWall) return 'none';
  heading(work.recorder, 'Leak seal');
  const linePressure = pressureAtWork(atWork);
  if (seal === undefined) {
    if (!leaksToday(defect)) return 'none';
    if (linePressure === 0) {
      warnCrew(
        work,
        'permit',
        'Nothing seals the leak: the line has to be empty, dry, isolated and vented before anyone touches it, and stays so until the laminate has cured.',
      );
      return 'none';
    }
    need(
      work,
      'seal',
      'the pipe leaks and the line stays under pressure while people work on it: nothing says how the leak is held; state the seal, or empty the line',
      'whoever seals the leak',
    );
    return open;
  }
  const opening = openingToday(work);
  if (opening === undefined) return 'none';
  const wall = found.wallToday;
  if (wall === 0) {
    need(
      work,
      'defect.remainingWall',
      'the band presses on the thinned pipe: the least wall round the hole, less the error of its reading, decides how hard',
      'the inspector at the pipe',
    );
    return open;
  }
  warnOfSealFactors(work, seal);
  const pad = sizePad(work, seal, found, opening);
  checkByHand(work, linePressure, pad.holeArea);
  const clamp = clampPad(work, seal, found, pad, linePressure);
  warnOfPad(work, clamp);
  const limit = limitPressure(work, seal, found, pad, wall, opening);
  checkAttempt(work, limit);
  const endForce = step(work.recorder, 'seal/end-load', endLoad, {
    pressure: service.designPressure,
    outsideDiameter: found.outsideDiameter,
    axialForce: forceOnSide(work, found.outsideDiameter, 'pulled'),
  });
  const jet = describeJet(work, seal, pad.holeArea, linePressure);
  const design: { -readonly [K in keyof SealDesign]: SealDesign[K] } = {
    padDiameter: pad.padDiameter,
    padGovernedBy: pad.padGovernedBy,
    forceOnPad: clamp.forceOnPad,
    forceOnHole: clamp.forceOnHole,
    forming: clamp.forming,
    bandLength: clamp.bandLength,
    highestPressure: limit.pressure,
    limitedBy: limit.governing,
    endLoadNotCarried: endForce,
  };
  if (clamp.fastened !== 'none') {
    design.fastenerTension = clamp.fastened.fastenerTension;
    design.torque = clamp.fastened.torque;
    design.strapStress = clamp.fastened.strapStress;
    design.contactPressure = clamp.fastened.contactPressure;
  }
  if (jet !== undefined) design.jet = jet;
  return design;
}

/** Whether anybody may try it on the live line; on an empty one nothing pushes on it, whatever the line carried. */
function checkAttempt({ recorder, reasons, case: { line, service } }: Workbook, limit: HighestSealPressure): void {
  if (line.state === 'empty, dry, isolated, vented') {
    decide(recorder, 'the seal is put on an empty line', 'it is isolated and vented: nothing pushes on the pad');
    return;
  }
  const answer = step(recorder, 'seal/attempt', attempt, {
    linePressure: line.pressure,
    highestPressure: limit.pressure,
    phase: service.phase,
    hazardous: service.hazards.length > 0,
    writtenProcedure: namesDocument(line.writtenProcedure),
  });
  if (!answer.pressureTooHigh) return;
  reasons.push({
    text: `the leak may not be sealed at this line pressure (limited by the ${limit.governing}): lower the pressure first`,
    found: { name: 'line pressure', kind: 'gauge pressure', value: line.pressure },
    limit: roundedDown('highest line pressure for the seal', 'gauge pressure', limit.pressure),
  });
}

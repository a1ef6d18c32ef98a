import { decide, heading, step } from '../../formula/index.js';
import {
  flowStressMultiple,
  metalLossDepth,
  type RemainingStrength,
  recentPressureLimit,
  remainingStrength,
  throughWallSlotPressure,
  wallLessReadingError,
  workingSafetyFactor,
} from '../../pipe/index.js';
import { type GaugePressure, type Length, roundedDown } from '../../quantity/index.js';
import type { LineUnderPressure } from '../case/case.js';
import type { AsFound } from '../design/design.js';
import type { LineDesign } from '../design/design-work.js';
import { type Open, open } from '../job/stage.js';
import { need, trial, type Workbook } from '../job/workbook.js';
import { FLOW_STRESSES, METHODS, soundPressure } from './strength.js';

/** Whether people may work on the line as it is, from the first touch to the cured laminate. */
export function judgeLine(work: Workbook, { found }: { found: AsFound }): LineDesign | Open {
  heading(work.recorder, 'The line while work goes on');
  const { line } = work.case;
  if (line.state === 'empty, dry, isolated, vented') return { state: line.state, pressure: 0 as GaugePressure };
  checkContents(work, line);
  const limit = work.case.defect.kind === 'through-wall hole' ? limitAtHole(work, found) : limitOnWall(work, found);
  if (limit === open) return open;
  if (line.pressure > limit.highestPressure) {
    work.reasons.push({
      text: 'the damaged pipe may not be worked on at this pressure: lower it to the limit, or empty the line',
      found: { name: 'pressure while work goes on', kind: 'gauge pressure', value: line.pressure },
      limit: roundedDown(`limit by the ${limit.limitedBy}`, 'gauge pressure', limit.highestPressure),
    });
  }
  return { state: line.state, pressure: line.pressure, ...limit };
}

/** Gas and hazardous contents: only by the site's written procedure, whether anything leaks yet or not. */
function checkContents(work: Workbook, { writtenProcedure }: LineUnderPressure): void {
  const { phase, hazards } = work.case.service;
  if (phase === 'liquid' && hazards.length === 0) return;
  if (writtenProcedure !== 'none') return;
  work.reasons.push({
    text: 'the contents are gas or hazardous and the line is under pressure, and the case names no written procedure of the site for this work',
  });
}

type Limit = Required<Pick<LineDesign, 'highestPressure' | 'limitedBy'>>;

/** A hole: if the whole thinned length were cut through, it must stay a leak. */
function limitAtHole(work: Workbook, { outsideDiameter }: AsFound): Limit | Open {
  const { recorder, case: repairCase } = work;
  const { defect, pipe } = repairCase;
  const wallThickness = leastWallToday(work);
  const safetyFactor = factorOf(work);
  if (safetyFactor === undefined) return open;
  if (wallThickness === 0) return noWallLeft(work, 'metal round the hole');
  const flowStress = step(recorder, 'pipe/flow-stress-multiple', flowStressMultiple, {
    yieldStrength: pipe.material.yieldStrength,
  });
  const highestPressure = step(recorder, 'pipe/through-wall-slot-pressure', throughWallSlotPressure, {
    outsideDiameter,
    wallThickness,
    flowStress,
    defectLength: defect.axialLength,
    safetyFactor,
  });
  return { highestPressure, limitedBy: 'metal round the hole' };
}

/** Metal loss: the larger of its safe pressure today and of what the line has carried lately, with its margin. */
function limitOnWall(work: Workbook, found: AsFound): Limit | Open {
  const { service } = work.case;
  const remainingWall = leastWallToday(work);
  const safetyFactor = factorOf(work);
  if (safetyFactor === undefined) return open;
  if (remainingWall === 0) return noWallLeft(work, 'safe pressure of the thinned wall');
  const strength = strengthToday(work, found, remainingWall, safetyFactor);
  if (strength === undefined) {
    need(
      work,
      'line.state',
      'no method judges the thinned wall as it is today, so nothing tells which pressure it carries while people work on it: empty the line, or have the pipe assessed',
      'whoever operates the line',
    );
    return open;
  }
  const { safePressure, failurePressure } = strength;
  const safe: Limit = { highestPressure: safePressure, limitedBy: 'safe pressure of the thinned wall' };
  if (service.recentPressure === undefined || failurePressure === undefined) return safe;
  const recent = step(work.recorder, 'pipe/recent-pressure-limit', recentPressureLimit, {
    recentPressure: service.recentPressure.pressure,
    failurePressure,
  });
  return recent > safePressure ? { highestPressure: recent, limitedBy: 'recent pressure' } : safe;
}

function noWallLeft({ recorder }: Workbook, limitedBy: Limit['limitedBy']): Limit {
  decide(
    recorder,
    'no pressure allowed while work goes on',
    'no wall is left at the defect once the reading error is taken off',
  );
  return { highestPressure: 0 as GaugePressure, limitedBy };
}

function strengthToday(
  work: Workbook,
  found: AsFound,
  remainingWall: Length,
  safetyFactor: number,
): RemainingStrength | undefined {
  const { recorder, case: repairCase } = work;
  const { defect, pipe, assessment = {} } = repairCase;
  const { wallThickness } = pipe;
  const { method, flowStress } = assessment;
  // A profile does not say where its readings may be off: the methods that need one judge the end of life only.
  const named = method === 'effective area' || method === 'API 579-1 Level 2' ? undefined : method;
  const { result } = trial(work, 'remaining strength today', () =>
    remainingStrength(
      {
        outsideDiameter: found.outsideDiameter,
        wallThickness,
        defectDepth: step(recorder, 'pipe/metal-loss-depth', metalLossDepth, { wallThickness, remainingWall }),
        defectLength: defect.axialLength,
        yieldStrength: pipe.material.yieldStrength,
        tensileStrength: pipe.material.tensileStrength,
        maximumPressure: soundPressure(work, found.outsideDiameter, safetyFactor),
        method: named === undefined ? undefined : METHODS[named],
        flowStress: flowStress === undefined ? undefined : FLOW_STRESSES[flowStress],
        safetyFactor,
      },
      recorder,
    ),
  );
  return result;
}

function leastWallToday(work: Workbook): Length {
  const { remainingWall: wallReading, readingError } = work.case.defect;
  if (readingError === 'none') return wallReading;
  return step(work.recorder, 'pipe/wall-less-reading-error', wallLessReadingError, { wallReading, readingError });
}

/** Without a stated factor nothing says how much of its strength the pipe may use while somebody stands beside it. */
function factorOf(work: Workbook): number | undefined {
  const { designFactor, safetyFactor } = work.case.assessment ?? {};
  if (designFactor === undefined && safetyFactor === undefined) {
    return need(
      work,
      'assessment.designFactor',
      'the line is under pressure while people work on its thinned wall, and the pressure that it may carry rests on the design factor of the line or a safety factor',
      'the code of the line',
    );
  }
  return step(work.recorder, 'pipe/working-safety-factor', workingSafetyFactor, {
    ...(designFactor === undefined ? {} : { designFactor }),
    ...(safetyFactor === undefined ? {} : { safetyFactor }),
  });
}

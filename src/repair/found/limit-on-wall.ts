import { decide, step } from '../../formula/index.js';
import { metalLossDepth, type RemainingStrength, recentPressureLimit } from '../../pipe/index.js';
import { fromDayToDay } from '../../quantity/clock.js';
import { exactly, type GaugePressure, type Length, line } from '../../quantity/index.js';
import { practice } from '../../rules/index.js';
import type { StrengthMethod } from '../case/case.js';
import type { AsFound } from '../design/design.js';
import { type Open, open } from '../job/stage.js';
import { need, type Workbook, warn } from '../job/workbook.js';
import { warnOfChoices } from './less-conservative.js';
import { strengthWith } from './strength.js';
import { factorAtWork, noWallLeft, type PressureLimit } from './wall-today.js';

/**
 * Metal loss: the larger of its safe pressure today and of what the line has carried lately, with its margin
 * (49 CFR 192.933(a)(1)).
 */
export function limitOnWall(work: Workbook, found: AsFound): PressureLimit | Open {
  const recentPressure = pressureCarriedLately(work);
  const remainingWall = found.wallToday;
  const safetyFactor = factorAtWork(work);
  if (safetyFactor === undefined) return open;
  const onWall = 'safe pressure of the thinned wall';
  if (remainingWall === 0) return noWallLeft(work, onWall);
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
  warnOfChoices(work, strength);
  const { safePressure, failurePressure } = strength;
  if (recentPressure !== undefined && failurePressure === undefined) {
    decide(
      work.recorder,
      'the pressure that the line carried lately does not count',
      'no method predicts a failure pressure of the wall as it is today',
    );
  }
  if (recentPressure !== undefined && failurePressure !== undefined) {
    const recent = step(work.recorder, 'pipe/recent-pressure-limit', recentPressureLimit, {
      recentPressure,
      failurePressure,
    });
    if (recent > safePressure) return { highestPressure: recent, limitedBy: 'recent pressure' };
  }
  return { highestPressure: safePressure, limitedBy: onWall };
}

/** The recent pressure of the case, where it was read lately: before that the wall may have been another one. */
function pressureCarriedLately(work: Workbook): GaugePressure | undefined {
  const { date, service } = work.case;
  const { recentPressure: read } = service;
  if (read === undefined) return undefined;
  const age = fromDayToDay(read.date, date);
  const { recentPressureAge: greatest } = practice;
  if (age === undefined || age > greatest.value) {
    warn(
      work,
      line(
        'The pressure that the line is said to have carried lately does not count: it was read more than {0} before the survey, or the case gives no day of the survey (`date`).',
        exactly(greatest.name, greatest.kind, greatest.value),
      ),
    );
    return undefined;
  }
  if (read.pressure > work.case.service.designPressure)
    return need(
      work,
      'service.recentPressure',
      'the pressure that the line is said to have carried lately is above its design pressure, and people would stand beside the thinned wall by it: one of the two is wrong, or the line was overloaded. State the highest reading within the design pressure, or none',
      'whoever operates the line: the record of its gauge',
    );
  return read.pressure;
}

function strengthToday(
  work: Workbook,
  found: AsFound,
  remainingWall: Length,
  safetyFactor: number,
): RemainingStrength | undefined {
  const { pipe, defect, assessment } = work.case;
  const walls = { wallThickness: pipe.wallThickness, remainingWall };
  const loss = {
    outsideDiameter: found.outsideDiameter,
    depth: step(work.recorder, 'pipe/metal-loss-depth', metalLossDepth, walls),
    length: defect.axialLength,
    width: defect.circumferentialWidth,
    // A profile does not say where its readings may be off: the methods that need one judge the end of life only.
    profile: undefined,
    toAttachment: defect.nearestAttachment,
  };
  const factors = { designFactor: undefined, safetyFactor };
  return strengthWith(work, 'remaining strength today', loss, factors, withoutProfile(assessment?.method)).result;
}

function withoutProfile(method: StrengthMethod | undefined): StrengthMethod | undefined {
  return method === 'effective area' || method === 'API 579-1 Level 2' ? undefined : method;
}

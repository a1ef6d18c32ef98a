import { decide, heading } from '../../formula/index.js';
import { exactly, type GaugePressure, line, roundedDown } from '../../quantity/index.js';
import { practice } from '../../rules/index.js';
import type { LineUnderPressure } from '../case/case.js';
import { namesDocument } from '../case/says-nothing.js';
import type { AsFound } from '../design/design.js';
import type { LineDesign, SealDesign } from '../design/design-work.js';
import { type Open, open } from '../job/stage.js';
import { type Workbook, warnCrew } from '../job/workbook.js';
import { limitAtHole } from './limit-at-hole.js';
import { limitOnWall } from './limit-on-wall.js';
import { lowestBeside } from './neighbour-strength.js';
import { leaksToday } from './opening.js';
import type { PressureLimit } from './wall-today.js';

/** The pipe as found, and the seal that holds its leak; nothing of one that is not worked out. */
export interface LineNeeds {
  readonly found: AsFound;
  readonly seal: SealDesign | 'none' | undefined;
}

/** Whether people may work on the line as it is, from the first touch to the cured laminate. */
export function judgeLine(work: Workbook, { found, seal }: LineNeeds): LineDesign | Open {
  heading(work.recorder, 'The line while work goes on');
  const { line: atWork, defect } = work.case;
  if (atWork.state === 'empty, dry, isolated, vented') return { state: atWork.state, pressure: 0 as GaugePressure };
  checkContents(work, atWork);
  warnOfThinWall(work);
  const limit = leaksToday(defect) ? limitAtHole(work, found) : limitOnWall(work, found);
  if (limit === open) return open;
  const ofPipe = withinDesign(work, lowestBeside(work, found, limit));
  if (atWork.pressure > ofPipe.highestPressure) {
    work.reasons.push({
      text: 'the damaged pipe may not be worked on at this pressure: lower it to the limit, or empty the line',
      found: exactly('pressure while work goes on', 'gauge pressure', atWork.pressure),
      limit: roundedDown(`by the ${ofPipe.limitedBy}`, 'gauge pressure', ofPipe.highestPressure),
    });
  }
  // The metal might bear more; what stands between the contents and the crew is the seal.
  if (seal === undefined) return { state: atWork.state, pressure: atWork.pressure };
  const { highestPressure, limitedBy } = withinSeal(work, ofPipe, atWork.pressure, seal);
  return { state: atWork.state, pressure: atWork.pressure, highestPressure, limitedBy };
}

/** Preparation takes metal from a wall that holds back pressure. */
function warnOfThinWall(work: Workbook): void {
  const { remainingWall } = work.case.defect;
  if (leaksToday(work.case.defect) || remainingWall >= practice.thinnestLiveWall.value) return;
  warnCrew(
    work,
    'surface',
    line(
      'The wall under pressure is {0} where it is thinnest, and blasting or a power tool takes a tenth of a millimetre and more: prepare it by hand and measure as you go, or empty the line first. Where a tool has to be used, the limits of this design are of a wall that it has thinned already.',
      exactly('wall under pressure', 'length', remainingWall),
    ),
  );
}

/** Whatever the wall bears, the rest of the line is not made for more than its design pressure, a stated surge not counted. */
function withinDesign({ recorder, stated }: Workbook, limit: PressureLimit): PressureLimit {
  const { designPressure } = stated.service;
  if (limit.highestPressure <= designPressure) return limit;
  decide(
    recorder,
    'the line stays within its design pressure while work goes on',
    line(
      `by the ${limit.limitedBy} it might be at {0}`,
      exactly(limit.limitedBy, 'gauge pressure', limit.highestPressure),
    ),
  );
  return { highestPressure: designPressure, limitedBy: 'design pressure' };
}

/** The seal bears no more than its own limit, and no more than it is tightened for: a line that is raised blows it off. */
function withinSeal(
  { recorder }: Workbook,
  ofPipe: PressureLimit,
  tightenedFor: GaugePressure,
  seal: SealDesign | 'none',
): PressureLimit {
  if (seal === 'none') return ofPipe;
  const { highestPressure, limitedBy } = ofPipe;
  if (tightenedFor > highestPressure || tightenedFor > seal.highestPressure)
    return highestPressure <= seal.highestPressure
      ? ofPipe
      : { highestPressure: seal.highestPressure, limitedBy: 'leak seal' };
  decide(
    recorder,
    'the line stays at the pressure that the leak seal is tightened for',
    line(`by the ${limitedBy} it might be at {0}`, exactly(limitedBy, 'gauge pressure', highestPressure)),
  );
  return { highestPressure: tightenedFor, limitedBy: 'pressure that the leak seal is tightened for' };
}

/** Gas and hazardous contents: only by the site's written procedure, whether anything leaks yet or not. */
function checkContents(work: Workbook, { writtenProcedure }: LineUnderPressure): void {
  const { phase, hazards } = work.case.service;
  if (phase === 'liquid' && hazards.length === 0) return;
  if (namesDocument(writtenProcedure)) return;
  work.reasons.push({
    text: 'the contents are gas or hazardous and the line is under pressure, and the case names no written procedure of the site for this work: state the number of one that is written and in force',
  });
}

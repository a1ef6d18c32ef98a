import { acceptanceOf } from './acceptance.js';
import { siteOf } from './climate.js';
import { type Cure, cureOf } from './cure.js';
import { resistanceOnTheDay } from './day-of-test.js';
import { endOfLifeOf } from './end-of-life.js';
import { extentOf } from './extent.js';
import { bandsOf } from './joints.js';
import { laminateOf } from './laminate.js';
import { layingOf } from './laying.js';
import { unbonded } from './leak.js';
import { leakSeal } from './leak-seal.js';
import { lineAtWork } from './line-at-work.js';
import { besidePressure } from './loads-of-case.js';
import { fillerMix, fillerVolume, resinMix } from './mix.js';
import { joined } from './neighbours.js';
import { isOpen, withoutOpenParts } from './open-parts.js';
import { byNote, type Readings } from './open-readings.js';
import { type Found, pipeAsFound } from './pipe-as-found.js';
import { type Job, readJob } from './read-job.js';
import type { Strength } from './remaining-strength.js';
import { scheduleOf } from './schedule.js';
import { strengthOf } from './strength-found.js';
import { verdictOf } from './verdict.js';
import { finalLapOf, sheetOf, spreadThickness, tapeOf } from './wrap.js';

/** What presses on the pipe from outside, where anything does. */
function pressedFromOutside(job: Job, found: Found): Record<string, number> {
  const { soil, outside } = besidePressure(job, found.outsideDiameter);
  return outside > 0 ? { outsidePressure: outside, soilPressure: soil } : {};
}

/** What an answer says of the pipe as found. */
function printed(found: Found, strength: Strength | undefined, outside: Record<string, number>): unknown {
  const { wall: _, holeToday: __, ...said } = found;
  if (strength === undefined) return { ...said, ...outside };
  const { failurePressure: ___, ...saidOfStrength } = strength;
  return { ...said, ...outside, strength: saidOfStrength };
}

/** The whole design by the second route, in the places of the answer of the library. */
export function wholeJob(document: unknown, readings: Readings = byNote): Readonly<Record<string, unknown>> {
  const answer = everyPart(joined(readJob(document), readings), readings);
  return withoutOpenParts(answer, answer['because'] as readonly string[]);
}

/** Every part that can be worked out, whatever stands against it, with the verdict and what it rests on. */
function everyPart(job: Job, readings: Readings): Record<string, unknown> {
  const found = pipeAsFound(job);
  const strength = strengthOf(job, found);
  const seal = leakSeal(job, found);
  const line = lineAtWork(job, found, seal);
  const where = unbonded(job, found);
  const laminate = laminateOf(job, found, strength, where, readings);
  const answer: Record<string, unknown> = {
    found: printed(found, strength, pressedFromOutside(job, found)),
    line,
    // No seal is put on where nothing leaks that anybody has measured.
    seal: seal ?? 'none',
  };
  const cures = {
    putty: job.seal === undefined || seal === undefined ? undefined : cureOf(job, job.seal.putty.cure),
    filler: job.filler === undefined ? undefined : cureOf(job, job.filler.cure),
    laminate: cureOf(job, job.laminate.cure),
  };
  const named = (material: string | undefined, cure: Cure | undefined): unknown =>
    material === undefined || cure === undefined ? 'none' : { ...cure, material };
  answer['cures'] = {
    putty: named(job.seal?.putty.name, cures.putty),
    filler: named(job.filler?.name, cures.filler),
    laminate: named(job.laminate.name, cures.laminate),
  };
  const base = { found, strength, line, seal, laminate };
  const working = [cures.filler, cures.laminate].flatMap((cure, index) =>
    cure === undefined || (index === 0 ? job.filler : job.resin) === undefined ? [] : [cure.workingTime],
  );
  answer['site'] = siteOf(job, undefined, found.throughWall);
  Object.assign(answer, verdictOf(job, { ...base, mixing: working }));
  if ('none' in laminate) return answer;
  answer['laminate'] = laminate;
  // Overlap and taper are those of all that lies there.
  const spread = spreadThickness(job, laminate.wrappedDiameter, laminate.plies, laminate.joints !== undefined);
  const extent = extentOf(job, found, where, spread);
  if (extent === undefined) return answer;
  Object.assign(answer, verdictOf(job, { ...base, mixing: working, extent }));
  answer['extent'] = extent;
  const bands =
    job.wrap.form === 'sheet' &&
    laminate.joints !== undefined &&
    laminate.plies * extent.totalLength < 5000 * job.wrap.width
      ? bandsOf(laminate.plies, job.wrap.width, extent.totalLength, extent.taper, laminate.joints)
      : [];
  const lap = finalLapOf(job, laminate.hoopStrain);
  const wrap =
    job.wrap.form === 'tape'
      ? tapeOf(job, extent, laminate.wrappedDiameter, laminate.plies)
      : sheetOf(job, extent, laminate.wrappedDiameter, laminate.plies, lap, bands);
  answer['wrap'] = wrap;
  const area = wrap.form === 'tape' ? wrap.tapeLength * job.wrap.width : wrap.sheetArea;
  const wrapLength = wrap.form === 'tape' ? wrap.overallLength : extent.totalLength;
  const filler = cures.filler && fillerMix(job, fillerVolume(job, found, extent, wrapLength), cures.filler.workingTime);
  const laminateResin = resinMix(job, area, area / job.wrap.width, cures.laminate.workingTime);
  answer['mixes'] = {
    filler: filler === undefined ? 'none' : { ...filler, material: job.filler?.name },
    laminateResin: laminateResin === undefined ? 'none' : { ...laminateResin, material: `${job.laminate.name}, resin` },
  };
  const rolls = layingOf(job, wrap, extent, laminate.wrappedDiameter, laminateResin, cures.laminate, bands);
  answer['rolls'] = rolls;
  const onTheDay = resistanceOnTheDay(job, found, where, laminate, readings);
  answer['acceptance'] = acceptanceOf(job, found, laminate, extent, onTheDay);
  const timeline = scheduleOf(job, cures, filler, rolls?.wrapTime);
  answer['timeline'] = timeline;
  const whole = { ...base, mixing: working, extent, wrap, wrapLength, bandsLaid: bands.length, onTheDay };
  const judged = verdictOf(job, { ...whole, schedule: timeline });
  // What stands against the wrap leaves its hours open: then the site is judged by the readings of the day.
  if (!isOpen('timeline', judged.because)) answer['site'] = siteOf(job, timeline, found.throughWall);
  Object.assign(answer, judged);
  if (judged.verdict === 'designed') answer['endOfLife'] = endOfLifeOf(job, found);
  return answer;
}

import { temperatureLimit } from './allowable-strain.js';
import { neighbourFails } from './apart.js';
import { coldestSteel, steelOverHours, thermometerError } from './cure.js';
import { bendTooTight } from './fitting.js';
import {
  classTooLow,
  hasNoProcedure,
  isThick,
  isWrapped,
  leaksUnheld,
  METHODS_NEED_METAL,
  reachesLaminate,
} from './how-far.js';
import type { Parts } from './parts.js';
import { growthUnknown } from './pipe-as-found.js';
import type { CureSheet, Job } from './read-job.js';
import { ruleOf } from './rules.js';
import { sealFailsBefore } from './seal-holds.js';
import { metalFails } from './slot.js';
import { soundPipeYields, spanBuckles, stressOfSoundPipe } from './sound-pipe.js';

/** Everything for which the pipe cannot be repaired this way. */
export function notRepairable(job: Job, parts: Parts): string[] {
  const { repair, service, laminate, line, acceptance } = job;
  const { found } = parts;
  const out: string[] = [];
  const say = (when: boolean, what: string): void => {
    if (when) out.push(what);
  };
  if (growthUnknown(job)) return out;
  const judged = reachesLaminate(job, found);
  say(judged && METHODS_NEED_METAL.has(repair.method ?? '') && found.throughWall, 'method without metal');
  const limit = temperatureLimit(job, found.throughWall);
  say(limit !== undefined && service.designTemperature > limit, 'too hot');
  say(classTooLow(job), 'class');
  say(repair.life > ruleOf(job, 'longestLife') * (1 + 1e-12), 'life');
  say(
    laminate.lapShearStrength !== undefined && laminate.lapShearStrength < ruleOf(job, 'lapShear.withWarning'),
    'lap shear',
  );
  const coldest = coldestSteel(job);
  say(laminate.lowestTemperature !== undefined && coldest < laminate.lowestTemperature, 'colder than qualified');
  const pressure = line.pressure ?? 0;
  say(hasNoProcedure(job), 'no procedure');
  say(sealFailsBefore(job, parts), 'seal');
  if (parts.line.highestPressure !== undefined) say(pressure > parts.line.highestPressure, 'line at work');
  if ('none' in parts.laminate) say(judged && parts.laminate.none === 'not repairable', parts.laminate.because);
  say(judged && isThick(job, parts.laminate, found), 'thick laminate');
  const { laidThickness } = parts.laminate;
  say(laidThickness !== undefined && bendTooTight(job, found.outsideDiameter, laidThickness), 'tight bend');
  say(isWrapped(job, parts) && openAtItsEdges(job), 'tape that hardly laps');
  // What laps beyond the plies that are asked for makes the laminate no thinner either.
  const asWound = parts.extent?.meanThickness ?? 0;
  say(
    isWrapped(job, parts) &&
      asWound > (laidThickness ?? 0) * (1 + 1e-9) &&
      isThick(job, { laidThickness: asWound }, found),
    'thick laps',
  );
  const available = repair.availableOverlap;
  if (judged && available !== undefined && parts.extent !== undefined) {
    say(
      available < (parts.wrapLength ?? parts.extent.totalLength) / 2 - parts.extent.defectLength / 2,
      'short of sound pipe',
    );
  }
  const test = acceptance?.pressureTest;
  if (test !== undefined && test !== 'none' && judged && parts.extent !== undefined) {
    const level = ruleOf(job, 'systemTest.factor') * service.designPressure;
    say(test.lowestRating !== undefined && level > test.lowestRating, 'rating');
    const stress = (level * found.outsideDiameter) / (2 * job.pipe.wallThickness);
    say(stress > job.pipe.material.yieldStrength, 'sound pipe yields under test');
  }
  say(judged && parts.onTheDay === 0, 'loads beside the pressure on the day of the test');
  for (const fails of metalFails(job, found)) say(true, `metal beside the slot ${fails}`);
  say(soundPipeYields(job, found), 'sound pipe yields');
  const allowed = METHODS_NEED_METAL.has(repair.method ?? '') ? job.pipe.material.allowableStress : undefined;
  say(allowed !== undefined && stressOfSoundPipe(job, found) > allowed, 'sound pipe above its allowable stress shares');
  say(spanBuckles(job, found), 'span buckles');
  for (const loss of job.apart) {
    for (const each of neighbourFails(job, found, loss)) say(each !== 'soil', `neighbour under ${each}`);
  }
  for (const sheet of leaksUnheld(job) ? [] : [job.filler?.cure, laminate.cure, job.seal?.putty.cure]) {
    say(tooCold(job, sheet), 'too cold to cure');
  }
  // Batches are made only of a wrap that is designed.
  const open = 'none' in parts.laminate ? parts.laminate.none === 'missing' : laminate.lapShearStrength === undefined;
  say(!open && parts.mixing.some((time) => 0.8 * time <= 300), 'no time to place');
  return out;
}

/** By so much turns lap at least where no other layer of the pass lies over their edges. */
const LEAST_LAP = 0.025;

function openAtItsEdges({ wrap }: Job): boolean {
  if (wrap.form === 'sheet') return false;
  return wrap.overlap < 0.5 - 1e-9 && wrap.overlap * wrap.width < LEAST_LAP;
}

function tooCold(job: Job, sheet: CureSheet | undefined): boolean {
  if (sheet === undefined || sheet.mechanism === 'moisture' || steelOverHours(job) !== undefined) return false;
  return job.site.pipeTemperature - thermometerError(job) < sheet.minimumTemperature;
}

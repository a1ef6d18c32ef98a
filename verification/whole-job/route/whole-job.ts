import { grownProfile } from './effective-area.js';
import { siteOf } from './climate.js';
import { cureOf } from './cure.js';
import { extentOf } from './extent.js';
import { laminateOf } from './laminate.js';
import { unbonded } from './leak.js';
import { leakSeal } from './leak-seal.js';
import { bandsOf } from './joints.js';
import { layingOf } from './laying.js';
import { acceptanceOf } from './acceptance.js';
import { lineAtWork } from './line-at-work.js';
import { fillerMix, fillerVolume, resinMix } from './mix.js';
import { byNote, type Readings } from './open-readings.js';
import { pipeAsFound } from './pipe-as-found.js';
import { readJob } from './read-job.js';
import { assessmentFactor, remainingStrength } from './remaining-strength.js';
import { scheduleOf } from './schedule.js';
import { finalLapOf, sheetOf, tapeOf } from './wrap.js';

/** The whole design by the second route, in the places of the answer of the library. */
export function wholeJob(document: unknown, readings: Readings = byNote): Record<string, unknown> {
  const job = readJob(document);
  const found = pipeAsFound(job);
  const { defect, loads } = job;
  const factor = assessmentFactor(job);
  const assessed =
    found.throughWall || factor === undefined
      ? undefined
      : remainingStrength(
          job,
          {
            diameter: found.outsideDiameter,
            wall: found.wall,
            depth: found.depthAtEndOfLife,
            length: found.lengthAtEndOfLife,
            width: found.widthAtEndOfLife,
            force: loads.axialForce ?? 0,
            ...(defect.profile === undefined
              ? {}
              : {
                  profile: grownProfile(
                    defect.profile,
                    found.wall,
                    found.depthAtEndOfLife - (found.wall - defect.remainingWall),
                    (found.lengthAtEndOfLife - defect.axialLength) / 2,
                  ),
                }),
          },
          factor,
          job.assessment?.method,
        );
  // A method that the case names and that cannot answer leaves the pipe unjudged.
  const named = job.assessment?.method;
  const answers = named === undefined || assessed?.methods.some(({ criterion }) => criterion === named) === true;
  const strength = answers ? assessed : undefined;
  const line = lineAtWork(job, found);
  const seal = leakSeal(job, found);
  const where = unbonded(job, found);
  const laminate = laminateOf(job, found, strength, where, readings);
  const answer: Record<string, unknown> = {
    found: { ...found, strength },
    line,
    seal,
  };
  const cures = {
    putty: job.seal === undefined ? undefined : cureOf(job, job.seal.putty.cure, readings),
    filler: job.filler === undefined ? undefined : cureOf(job, job.filler.cure, readings),
    laminate: cureOf(job, job.laminate.cure, readings),
  };
  answer['cures'] = cures;
  if ('none' in laminate) return { ...answer, because: laminate };
  answer['laminate'] = laminate;
  const extent = extentOf(job, found, where, laminate.laidThickness);
  if (extent === undefined) return answer;
  answer['extent'] = extent;
  const bands =
    job.wrap.form === 'sheet' && laminate.joints !== undefined
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
  const filler = cures.filler && fillerMix(job, fillerVolume(job, found, extent, wrapLength, readings), cures.filler.workingTime);
  const laminateResin = resinMix(job, area, cures.laminate.workingTime);
  answer['mixes'] = { filler, laminateResin };
  const rolls = layingOf(job, wrap, extent, laminate.wrappedDiameter, laminateResin, cures.laminate, bands, readings);
  answer['rolls'] = rolls;
  answer['acceptance'] = acceptanceOf(job, found, laminate, extent, Number.NaN);
  const timeline = scheduleOf(job, cures, filler, rolls?.wrapTime);
  answer['timeline'] = timeline;
  answer['site'] = siteOf(job, timeline, readings);
  return answer;
}

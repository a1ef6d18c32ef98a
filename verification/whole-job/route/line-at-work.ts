import { bears } from './apart.js';
import { besidePressure, pullOf } from './loads-of-case.js';
import { type Found, leaksNow } from './pipe-as-found.js';
import type { Job } from './read-job.js';
import { assessmentFactor, foliasModified, remainingStrength } from './remaining-strength.js';
import { shareBesideCut } from './slot.js';

export interface Line {
  readonly state: string;
  readonly pressure: number;
  readonly highestPressure?: number;
  readonly limitedBy?: string;
}

/** What a damaged pipe keeps where nobody asks for more. */
const LEAST_FACTOR = 1.25;

/**
 * The pipe, and where a seal holds its leak no more than the seal bears, nor than the pressure that it is tightened for. A pad
 * round more than half the pipe is no seal that a band makes, and the design is refused by it.
 */
export function lineAtWork(
  job: Job,
  found: Found,
  seal: { readonly padDiameter: number; readonly highestPressure: number } | undefined,
): Line {
  const line = byThePipe(job, found);
  const { pressure, highestPressure: most } = line;
  if (most === undefined || seal === undefined || seal.padDiameter > (Math.PI * found.outsideDiameter) / 2) return line;
  const all: readonly (readonly [number, string | undefined])[] = [
    [most, line.limitedBy],
    [seal.highestPressure, 'leak seal'],
    [pressure, 'pressure that the leak seal is tightened for'],
  ];
  // On a tie with its own pressure the seal is named: nothing above it is meant.
  const [highestPressure, limitedBy] = all.reduce((a, b) =>
    b[0] < a[0] || (b[0] === a[0] && b[0] === pressure) ? b : a,
  );
  return limitedBy === undefined ? { ...line, highestPressure } : { ...line, highestPressure, limitedBy };
}

/** What the wall bears, and never more than the design pressure that the case states, whatever its surge. */
function byThePipe(job: Job, found: Found): Line {
  const line = byNeighbours(job, found, byTheWall(job, found));
  const most = job.service.statedPressure ?? job.service.designPressure;
  if (line.highestPressure === undefined || line.highestPressure <= most) return line;
  return { ...line, highestPressure: most, limitedBy: 'design pressure' };
}

/** Losses that lie apart bear the pressure of the work by themselves. */
function byNeighbours(job: Job, found: Found, line: Line): Line {
  const stated = assessmentFactor(job);
  if (line.highestPressure === undefined || stated === undefined) return line;
  const factor = Math.max(stated, LEAST_FACTOR);
  const all = job.apart.map((loss) => bears(job, found, loss, 0, factor, 1 / factor));
  const most = Math.min(...all);
  return most < line.highestPressure
    ? { ...line, highestPressure: most, limitedBy: 'safe pressure of a neighbouring loss' }
    : line;
}

/** The highest pressure at which people may work on the wall as it is today (CHANGELOG; 49 CFR 192.933 for the 80 per cent). */
function byTheWall(job: Job, found: Found): Line {
  const pressure = job.line.pressure ?? 0;
  const { state } = job.line;
  if (pressure === 0) return { state, pressure };
  const stated = assessmentFactor(job);
  if (stated === undefined) return { state, pressure };
  const factor = Math.max(stated, LEAST_FACTOR);
  const { outsideDiameter: D, wallToday } = found;
  const { axialLength: length, circumferentialWidth: width } = job.defect;
  if (leaksNow(job)) {
    const m = foliasModified((length * length) / (D * wallToday));
    const leak = (2 * 1.1 * job.pipe.material.yieldStrength * wallToday) / (D * m * factor);
    // Along the pipe the width of the loss is cut through, and the sound wall beside it carries (net section, with its bending).
    // A push bends the cut side too: it counts as a pull.
    const pull = besidePressure(job, D).force / (Math.PI * D * found.wall);
    const stress = (1.1 * job.pipe.material.yieldStrength * shareBesideCut(width, D)) / factor - pull;
    const along = Math.max(0, (stress * 4 * found.wall) / D);
    return along < leak
      ? { state, pressure, highestPressure: along, limitedBy: 'metal beside the hole, along the pipe' }
      : { state, pressure, highestPressure: leak, limitedBy: 'metal round the hole' };
  }
  const thinned = {
    diameter: D,
    wall: found.wall,
    depth: found.wall - wallToday,
    length,
    width,
    force: pullOf(job, D),
  };
  const named = job.assessment?.method;
  // The profile is that of the end of life: today's wall is judged without one, by all that need none.
  const asked = named === 'effective area' || named === 'API 579-1 Level 2' ? undefined : named;
  const strength = remainingStrength(job, thinned, factor, asked, 1 / factor);
  // A method that the case names and a wall that it does not reach: nothing judges what people would stand beside.
  if (asked !== undefined && !strength.methods.some(({ criterion }) => criterion === asked)) return { state, pressure };
  const { recentPressure } = job.service;
  const recent =
    recentPressure === undefined || isOld(recentPressure.date, job.date) || strength.failurePressure === undefined
      ? 0
      : Math.min(0.8 * recentPressure.pressure, strength.failurePressure / LEAST_FACTOR);
  return recent > strength.safePressure
    ? { state, pressure, highestPressure: recent, limitedBy: 'recent pressure' }
    : { state, pressure, highestPressure: strength.safePressure, limitedBy: 'safe pressure of the thinned wall' };
}

/** A pressure of more than two months before the survey was not carried lately. */
function isOld(day: string, survey: string | undefined): boolean {
  return survey !== undefined && Date.parse(survey) - Date.parse(day) > 60 * 86_400_000;
}

import { askerOf, temperatureLimit } from './allowable-strain.js';
import { liesUnder, neighbourFails } from './apart.js';
import { steelOverHours, warmestReading } from './cure.js';
import { testsSuffice } from './energy-from-tests.js';
import { fittingNotCovered } from './fitting.js';
import { isWrapped, leaksUnheld, reachesLaminate, strainsStand } from './how-far.js';
import type { Parts } from './parts.js';
import { growthUnknown, leaksNow } from './pipe-as-found.js';
import type { CureSheet, Job } from './read-job.js';
import { bondStrains, type DefaultStrains, defaultStrains, ruleOf } from './rules.js';
import { leadAngle } from './tape-moduli.js';

/** Everything that this version does not design for. */
export function notCovered(job: Job, parts: Parts): string[] {
  const { defect, filler, laminate, assessment, repair, service, line, wrap } = job;
  const { found, extent } = parts;
  const reached = reachesLaminate(job, found);
  const out: string[] = [];
  const say = (when: boolean, what: string): void => {
    if (when) out.push(what);
  };
  say(defect.kind !== 'metal loss' && !leaksNow(job), 'kind of defect');
  say(fittingNotCovered(job) || (job.fitting?.kind === 'bend' && job.apart.length > 0), 'fitting');
  if (growthUnknown(job)) return out;
  for (const loss of job.apart) say(neighbourFails(job, found, loss).includes('soil'), 'neighbour bent by soil');
  const limit = temperatureLimit(job, found.throughWall);
  const coolEnough = limit !== undefined && service.designTemperature <= limit;
  say(coolEnough && (laminate.strainToFailure ?? 1) < ruleOf(job, 'leastFailureStrain'), 'brittle laminate');
  // Who asks for a strain needs the limit and the failure strain first.
  const asked = limit !== undefined && laminate.strainToFailure !== undefined;
  say(asked && defaultStrains(askerOf(job)) === undefined, 'life');
  say(reached && nearFailure(job, defaultStrains(askerOf(job))), 'default strain near failure');
  if (reached && !('none' in parts.laminate) && laminate.lapShearStrength !== undefined) {
    const bond = bondStrains(job);
    const stands = bond !== undefined && !nearFailure(job, bond) && ruleOf(job, 'overlap.taper') >= FLATTEST_TAPER;
    // The joints of a sheet lie along the extent.
    say(!stands, wrap.form === 'sheet' ? 'joints without an extent' : 'extent');
  }
  say(asked && found.throughWall && repair.life > ruleOf(job, 'longestLife') * (1 + 1e-12), 'life');
  // Too hot a laminate is refused before anybody asks for its strains.
  say(coolEnough && (job.loads.cycles?.number ?? 0) > ruleOf(job, 'cyclic.lastCycles'), 'cycles');
  const tested = laminate.longTermStrength;
  // Without a shear modulus nobody knows the moduli of a tape, and no thickness is asked of any method.
  const moduli = wrap.form === 'sheet' || laminate.shearModulus !== undefined;
  if (reached && moduli && repair.method === 'long-term strength' && tested?.testTemperature !== undefined) {
    const hottest = Math.max(tested.testTemperature, tested.second?.testTemperature ?? 0);
    say(Math.max(service.designTemperature, job.site.pipeTemperature) > hottest, 'long-term tests');
  }
  say(
    strainsStand(job, found) &&
      !leaksUnheld(job) &&
      wrap.form === 'tape' &&
      leadAngle(job, found.outsideDiameter) > Math.PI / 12,
    'steep tape',
  );
  say(filler?.underWholeWrap === true && filler.qualifiedOverFiller === undefined, 'filler under the wrap');
  const { seal } = job;
  const pressure = line.pressure ?? 0;
  if (found.holeToday !== undefined && pressure > 0 && seal !== undefined) {
    const hole = found.holeToday;
    say(service.phase !== 'liquid' || service.hazards.length > 0, 'by hand: contents');
    say(Math.max(job.site.pipeTemperature, 0) > 321.15, 'by hand: hot');
    say(pressure > 7e5, 'by hand: pressure');
    say((2 * pressure * Math.PI * hole * hole) / 4 > 200, 'by hand: jet');
  }
  if (seal !== undefined && parts.seal !== undefined) {
    say(parts.seal.padDiameter > (Math.PI * found.outsideDiameter) / 2, 'pad round more than half the pipe');
  }
  const named = assessment?.method;
  if (
    named !== undefined &&
    !found.throughWall &&
    (assessment?.designFactor ?? assessment?.safetyFactor) !== undefined
  ) {
    say(parts.strength === undefined && job.fitting?.kind !== 'bend', 'named method');
  }
  const asksTests = reached && moduli && found.throughWall && filler?.underWholeWrap !== true;
  say(asksTests && !testsSuffice(laminate), 'tests of holes');
  if (found.throughWall && found.designHole !== undefined) {
    if (reached && parts.laminate.laidThickness !== undefined) {
      const thin = Math.min(found.wall, parts.laminate.laidThickness);
      say(
        found.designHole > Math.sqrt(ruleOf(job, 'hole.validity') * found.outsideDiameter * thin) * (1 + 1e-9),
        'large hole',
      );
    }
    const usedUp = found.wallAtEndOfLife < ruleOf(job, 'throughWallBelow') && defect.holeAtEndOfLife === undefined;
    const [long, short] = [found.lengthAtEndOfLife, found.widthAtEndOfLife];
    say(usedUp && Math.max(long / short, short / long) > ruleOf(job, 'hole.aspectRatio'), 'slot');
  }
  const wrapped = isWrapped(job, parts);
  if (wrapped && filler?.greatestLift !== undefined) {
    const inside = defect.cause === 'internal corrosion' || defect.cause === 'internal erosion';
    const pit = inside ? 0 : found.wall - defect.remainingWall;
    say(Math.max(filler.thickness, filler.thicknessOverDefect + pit) > filler.greatestLift, 'deep pour');
  }
  if (wrapped && extent !== undefined && defect.nearestAttachment !== undefined) {
    const reach = ((parts.wrapLength ?? extent.totalLength) - defect.axialLength) / 2;
    say(defect.nearestAttachment - job.reach < reach, 'attachment');
  }
  for (const sheet of leaksUnheld(job) ? [] : [filler?.cure, laminate.cure, seal?.putty.cure]) {
    say(moistureOutside(job, sheet), 'moisture cure');
  }
  if (wrapped && extent !== undefined) {
    for (const loss of job.apart) say(liesUnder(job, loss, extent, parts.wrapLength), 'neighbour under the laminate');
  }
  say(wrapped && (parts.bandsLaid ?? 0) > 500, 'bands');
  return out;
}

/** A steeper end peels (2.12: 5:1 or flatter), whoever reads another one. */
const FLATTEST_TAPER = 5;
/** No default strain above this share of what the laminate breaks at (CHANGELOG, failureMargin). */
const FAILURE_MARGIN = 2.5;

function nearFailure({ laminate }: Job, strains: DefaultStrains | undefined): boolean {
  const { strainToFailure: most } = laminate;
  if (most === undefined || strains === undefined) return false;
  return Math.max(strains.hoop, strains.axial, strains.softAxial) > (most / FAILURE_MARGIN) * (1 + 1e-12);
}

function moistureOutside({ site }: Job, sheet: CureSheet | undefined): boolean {
  if (sheet === undefined || sheet.mechanism !== 'moisture') return false;
  const job = { site } as Job;
  const steel = [site.pipeTemperature, ...(steelOverHours(job) ?? []).map(({ temperature }) => temperature)];
  const hottest = Math.max(...sheet.rows.map((row) => row.temperature));
  const coldest = Math.min(...sheet.rows.map((row) => row.temperature));
  const dampest = Math.max(...sheet.rows.map((row) => row.humidity));
  const driest = Math.min(...sheet.rows.map((row) => row.humidity));
  const warm = warmestReading(job);
  const cold = Math.min(...steel);
  const air = [site.relativeHumidity, ...(site.forecast ?? []).map((hours) => hours.relativeHumidity)];
  const [dry, damp] = [Math.min(...air), Math.max(...air)];
  const slower = sheet.rows.some((row) => row.temperature <= cold && row.humidity <= dry);
  const quicker = sheet.rows.some((row) => row.temperature >= warm && row.humidity >= damp);
  return (
    cold < coldest ||
    warm > hottest ||
    site.relativeHumidity > dampest ||
    site.relativeHumidity < driest ||
    !slower ||
    !quicker
  );
}

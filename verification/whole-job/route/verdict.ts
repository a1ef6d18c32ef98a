import { temperatureLimit } from './allowable-strain.js';
import { steelOverHours, thermometerError, warmestReading } from './cure.js';
import { testsSuffice } from './energy-from-tests.js';
import type { Extent } from './extent.js';
import { bendTooTight, fittingNotCovered } from './fitting.js';
import { energyOver, type LaminateFigures, type NoLaminate } from './laminate.js';
import { unbonded } from './leak.js';
import type { SealFigures } from './leak-seal.js';
import type { Line } from './line-at-work.js';
import { type Found, leaksNow } from './pipe-as-found.js';
import type { CureSheet, Job, Resists } from './read-job.js';
import type { Strength } from './remaining-strength.js';
import { LAP_SHEAR_WITH_WARNING, LEAST_FAILURE_STRAIN, LONGEST_LIFE, MOST_CYCLES, THIN_LAMINATE } from './rules.js';
import type { Schedule } from './schedule.js';
import { metalFails } from './slot.js';
import { leadAngle } from './tape-moduli.js';
import type { Sheet, Tape } from './wrap.js';

/** What was found of a job, as far as it got. */
export interface Parts {
  readonly found: Found;
  readonly strength?: Strength | undefined;
  readonly line: Line;
  readonly seal?: SealFigures | undefined;
  readonly laminate: LaminateFigures | NoLaminate;
  readonly extent?: Extent | undefined;
  readonly wrap?: Tape | Sheet | undefined;
  readonly wrapLength?: number | undefined;
  readonly schedule?: Schedule | undefined;
  readonly mixing: readonly number[];
  readonly bandsLaid?: number;
  /** Pressure that the laid laminate resists on the day of the test. */
  readonly onTheDay?: number;
}

/** Fibre of 72 GPa in six tenths of a ply and resin of 3 GPa in the rest, all of it one way. */
const STIFFEST_GLASS = 45e9;

const METHODS_NEED_METAL = new Set(['substrate sharing load', 'substrate yielded']);

/** Everything that this version does not design for. */
function notCovered(job: Job, parts: Parts): string[] {
  const { defect, filler, laminate, assessment, repair, service, line, wrap } = job;
  const { found } = parts;
  const reached = reachesLaminate(job, found);
  const out: string[] = [];
  const say = (when: boolean, what: string): void => {
    if (when) out.push(what);
  };
  say(defect.kind !== 'metal loss' && !leaksNow(job), 'kind of defect');
  say(fittingNotCovered(job), 'fitting');
  const limit = temperatureLimit(job, found.throughWall);
  const coolEnough = limit !== undefined && service.designTemperature <= limit;
  say(coolEnough && (laminate.strainToFailure ?? 1) < LEAST_FAILURE_STRAIN, 'brittle laminate');
  say(repair.life > LONGEST_LIFE * (1 + 1e-12) && job.basis === 'ISO 24817', 'no default strain for the life');
  say(repair.life > LONGEST_LIFE * (1 + 1e-12) && limit !== undefined, 'life');
  // Too hot a laminate is refused before anybody asks for its strains.
  say(coolEnough && (job.loads.cycles?.number ?? 0) > MOST_CYCLES, 'cycles');
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
    say(Math.max(job.site.pipeTemperature, 0) > 333.15, 'by hand: hot');
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
      say(found.designHole > Math.sqrt(6 * found.outsideDiameter * thin) * (1 + 1e-9), 'large hole');
    }
    const usedUp = found.wallAtEndOfLife < 1e-3 && defect.holeAtEndOfLife === undefined;
    const [long, short] = [found.lengthAtEndOfLife, found.widthAtEndOfLife];
    say(usedUp && Math.max(long / short, short / long) > 5, 'slot');
  }
  const wrapped = isWrapped(job, parts);
  if (wrapped && filler?.greatestLift !== undefined) {
    const inside = defect.cause === 'internal corrosion' || defect.cause === 'internal erosion';
    const pit = inside ? 0 : found.wall - defect.remainingWall;
    say(Math.max(filler.thickness, filler.thicknessOverDefect + pit) > filler.greatestLift, 'deep pour');
  }
  if (wrapped && parts.extent !== undefined && defect.nearestAttachment !== undefined) {
    const reach = ((parts.wrapLength ?? parts.extent.totalLength) - defect.axialLength) / 2;
    say(defect.nearestAttachment < reach, 'attachment');
  }
  for (const sheet of leaksUnheld(job) ? [] : [filler?.cure, laminate.cure, seal?.putty.cure]) {
    say(moistureOutside(job, sheet), 'moisture cure');
  }
  say(wrapped && (parts.bandsLaid ?? 0) > 500, 'bands');
  return out;
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

/** Everything for which the pipe cannot be repaired this way. */
function notRepairable(job: Job, parts: Parts): string[] {
  const { repair, service, laminate, line, acceptance } = job;
  const { found } = parts;
  const out: string[] = [];
  const say = (when: boolean, what: string): void => {
    if (when) out.push(what);
  };
  const judged = reachesLaminate(job, found);
  say(judged && METHODS_NEED_METAL.has(repair.method ?? '') && found.throughWall, 'method without metal');
  const limit = temperatureLimit(job, found.throughWall);
  say(limit !== undefined && service.designTemperature > limit, 'too hot');
  say(classTooLow(job), 'class');
  say(repair.life > LONGEST_LIFE * (1 + 1e-12), 'life');
  say(laminate.lapShearStrength !== undefined && laminate.lapShearStrength < LAP_SHEAR_WITH_WARNING, 'lap shear');
  const coldest = coldestSteel(job);
  say(laminate.lowestTemperature !== undefined && coldest < laminate.lowestTemperature, 'colder than qualified');
  const pressure = line.pressure ?? 0;
  say(hasNoProcedure(job), 'no procedure');
  say(sealFailsBefore(job, parts), 'seal');
  if (parts.line.highestPressure !== undefined) say(pressure > parts.line.highestPressure, 'line at work');
  if ('none' in parts.laminate) say(judged && parts.laminate.none === 'not repairable', parts.laminate.because);
  say(judged && isThick(parts.laminate, found), 'thick laminate');
  const { laidThickness } = parts.laminate;
  say(laidThickness !== undefined && bendTooTight(job, found.outsideDiameter, laidThickness), 'tight bend');
  say(isWrapped(job, parts) && openAtItsEdges(job), 'tape that hardly laps');
  const available = repair.availableOverlap;
  if (judged && available !== undefined && parts.extent !== undefined) {
    say(
      available < (parts.wrapLength ?? parts.extent.totalLength) / 2 - parts.extent.defectLength / 2,
      'short of sound pipe',
    );
  }
  const test = acceptance?.pressureTest;
  if (test !== undefined && test !== 'none' && judged && parts.extent !== undefined) {
    const level = 1.1 * service.designPressure;
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

/** Gas or what is hazardous under pressure, and nobody has written down how to work on it. */
function hasNoProcedure({ line, service }: Job): boolean {
  const hurts = service.phase !== 'liquid' || service.hazards.length > 0;
  return (line.pressure ?? 0) > 0 && hurts && line.writtenProcedure === 'none';
}

/** A free span under push (Euler between hinges, 3 on the force), the wall of the end of the life all round. */
function spanBuckles({ loads, pipe }: Job, { outsideDiameter: D, wallAtEndOfLife }: Found): boolean {
  const { freeSpan: span, axialForce: force = 0 } = loads;
  if (span === undefined || force >= 0) return false;
  const section = (Math.PI / 64) * (D ** 4 - (D - 2 * wallAtEndOfLife) ** 4);
  return -force > (Math.PI ** 2 * (pipe.material.modulus ?? 207e9) * section) / (3 * span * span);
}

/** The wrap is laid out only where nothing stands against its laminate, its bond, its class, the line and the seal. */
function isWrapped(job: Job, parts: Parts): boolean {
  const { found, laminate } = parts;
  if (!reachesLaminate(job, found) || classTooLow(job) || 'none' in laminate || isThick(laminate, found)) return false;
  if ((job.laminate.lapShearStrength ?? 0) < LAP_SHEAR_WITH_WARNING) return false;
  if ((job.line.pressure ?? 0) > (parts.line.highestPressure ?? Number.POSITIVE_INFINITY)) return false;
  if (metalFails(job, found).length > 0) return false;
  return !spanBuckles(job, found) && !hasNoProcedure(job) && !sealFailsBefore(job, parts);
}

/** Newton on the pad that putty alone is trusted with (CHANGELOG, practice.mostOnPutty). */
const MOST_ON_PUTTY = 150;

/** Steel that the pad lies on all round the hole (CHANGELOG, practice.leastPadMargin). */
const LEAST_MARGIN = 0.01;

/** A seal that does not hold: too much pressure, a sheet that lets the putty out, bands taken off a line that pushes. */
function sealFailsBefore(job: Job, { seal, found }: Parts): boolean {
  if (seal === undefined || job.seal === undefined) return false;
  if (seal.padDiameter < ((found.holeToday ?? 0) + 2 * LEAST_MARGIN) * (1 - 1e-12)) return true;
  const pressure = job.line.pressure ?? 0;
  const { across } = job.seal.sheet;
  if (pressure > seal.highestPressure) return true;
  if (across !== undefined && across < seal.padDiameter) return true;
  // Bands over a rim that is not stated are asked for first.
  if (pressure === 0 || across === undefined || job.seal.collar === undefined) return false;
  const off = job.seal.bands === 'removed before the wrap';
  return off && (job.line.state !== 'static head' || seal.forceOnPad > MOST_ON_PUTTY);
}

function isThick({ laidThickness = 0 }: LaminateFigures | NoLaminate, found: Found): boolean {
  return laidThickness >= found.outsideDiameter / THIN_LAMINATE;
}

/** The laminate is designed only where its limits, the class and the sound pipe allow it, and something holds a live leak. */
function reachesLaminate(job: Job, found: Found): boolean {
  if (!strainsStand(job, found)) return false;
  if (soundPipeYields(job, found)) return false;
  return !leaksUnheld(job);
}

/** The pipe leaks, people stand beside it, and nothing says how the leak is held: then nothing is worked out on it. */
function leaksUnheld(job: Job): boolean {
  return leaksNow(job) && (job.line.pressure ?? 0) > 0 && job.seal === undefined;
}

/** Strains are allowed where the limits are known and kept. */
function strainsStand(job: Job, found: Found): boolean {
  const { service, laminate } = job;
  const limit = temperatureLimit(job, found.throughWall);
  if (limit === undefined || service.designTemperature > limit) return false;
  return laminate.strainToFailure !== undefined && laminate.strainToFailure >= LEAST_FAILURE_STRAIN;
}

function classTooLow({ basis, repair, service }: Job): boolean {
  if (basis !== 'ISO 24817') return false;
  const { designPressure: P, designTemperature: T } = service;
  if (repair.class < 3 && (service.hazards.length > 0 || service.phase !== 'liquid')) return true;
  if (repair.class === 1) return P > 1e6 || T > 313.15 || service.safetyCritical;
  return repair.class === 2 && (P > 2e6 || T >= 373.15);
}

function soundPipeYields(job: Job, found: Found): boolean {
  return stressOfSoundPipe(job, found) > job.pipe.material.yieldStrength;
}

/** Round the pipe, and by Tresca with the loads along it. */
function stressOfSoundPipe({ service, loads }: Job, found: Found): number {
  const D = found.outsideDiameter;
  const t = found.wall;
  const end = (service.designPressure * Math.PI * D * D) / 4;
  const axial = (end + (loads.axialForce ?? 0)) / (Math.PI * D * t);
  const bend = (32 * D * Math.abs(loads.bendingMoment ?? 0)) / (Math.PI * (D ** 4 - (D - 2 * t) ** 4));
  const torsion = Math.abs(loads.torsion ?? 0);
  // Torsion of a round tube at its outside: T r / J.
  const polar = (Math.PI * (D ** 4 - (D - 2 * t) ** 4)) / 32;
  const shear = (2 * Math.abs(loads.shearForce ?? 0)) / (Math.PI * t * (D - t)) + (torsion * D) / 2 / polar;
  // Principal stresses at the pulled and at the pushed edge, and none through the wall.
  const tresca = [axial + bend, axial - bend].map((along) => {
    const middle = (found.hoopStressSound + along) / 2;
    const radius = Math.hypot((found.hoopStressSound - along) / 2, shear);
    return Math.max(middle + radius, 0) - Math.min(middle - radius, 0);
  });
  return Math.max(...tresca);
}

function tooCold(job: Job, sheet: CureSheet | undefined): boolean {
  if (sheet === undefined || sheet.mechanism === 'moisture' || steelOverHours(job) !== undefined) return false;
  return job.site.pipeTemperature - thermometerError(job) < sheet.minimumTemperature;
}

/** What a design to sign still needs. */
function missing(job: Job, parts: Parts): string[] {
  const { service, defect, laminate, filler, acceptance, assessment, line, loads, repair, pipe, seal, site } = job;
  const { found } = parts;
  const out: string[] = [];
  const ask = (when: boolean, what: string): void => {
    if (when) out.push(what);
  };
  ask(service.designTemperature > 343.15 && !service.hazards.includes('hot'), 'hot contents that nobody calls hot');
  ask(job.fitting?.kind === 'bend' && job.fitting.bendRadius === undefined, 'radius of the bend');
  ask(service.surge === undefined, 'surge');
  const cracking = service.cracking;
  ask(cracking === undefined || (cracking !== 'none' && cracking.test === undefined), 'cracking');
  ask(defect.nearestAttachment === undefined, 'nearest attachment');
  ask(laminate.transitionCuredAt === undefined, 'cure of the sample');
  const stiffAsCarbon = Math.max(laminate.hoopModulus, laminate.axialModulus) > STIFFEST_GLASS;
  const isolates = laminate.fibre === 'carbon' || stiffAsCarbon;
  ask(laminate.fibre === undefined || (isolates && laminate.isolatingLayer === undefined), 'fibre');
  ask((loads.axialForce ?? 0) < 0 && loads.freeSpan === undefined, 'free span');
  ask(loads.soil !== undefined && pipe.cathodicProtection === undefined, 'cathodic protection');
  // A laminate hangs free over a hollow that nothing fills.
  const inside = defect.cause === 'internal corrosion' || defect.cause === 'internal erosion';
  const hollow = inside ? 0 : pipe.wallThickness - defect.remainingWall;
  ask(hollow > 0 && (filler === undefined || filler.thicknessOverDefect < hollow), 'filler in the hollow');
  ask(filler !== undefined && filler.greatestLift === undefined, 'greatest lift');
  const test = acceptance?.pressureTest;
  ask(test !== undefined && test !== 'none' && test.lowestRating === undefined, 'lowest rating');
  ask(temperatureLimit(job, found.throughWall) === undefined, 'transition');
  ask(laminate.strainToFailure === undefined, 'strain to failure');
  ask(laminate.lapShearStrength === undefined, 'lap shear');
  ask(laminate.shearModulus === undefined && (job.wrap.form === 'tape' || found.throughWall), 'shear modulus');
  const coldest = coldestSteel(job);
  ask(coldest < 273.15 && laminate.lowestTemperature === undefined, 'lowest temperature');
  if (laminate.transitionCuredAt !== undefined) {
    const steel = [site.pipeTemperature, ...(steelOverHours(job) ?? []).map(({ temperature }) => temperature)];
    ask(Math.min(...steel) < laminate.transitionCuredAt, 'colder cure than the sample');
  }
  const factor = assessment?.safetyFactor ?? assessment?.designFactor;
  ask(defect.kind === 'through-wall slot' && factor === undefined, 'factor for the metal beside the slot');
  ask(defect.kind === 'through-wall slot' && defect.slot === undefined, 'extents of the slot');
  const pressure = line.pressure ?? 0;
  ask(pressure > 0 && parts.line.highestPressure === undefined, 'what the wall carries at work');
  // Without an allowable stress only a factor tells whether the sound pipe has anything to give.
  ask(
    METHODS_NEED_METAL.has(repair.method ?? '') && pipe.material.allowableStress === undefined && factor === undefined,
    'factor of the line',
  );
  if (repair.method === 'substrate sharing load' && !found.throughWall) {
    ask(factor === undefined, 'factor for sharing');
    ask(pipe.material.allowableStress === undefined, 'allowable stress');
  }
  if (repair.method === 'long-term strength') {
    ask(
      laminate.longTermStrength === undefined || laminate.longTermStrength.testTemperature === undefined,
      'long-term strength',
    );
  }
  const leaks = leaksNow(job);
  if (found.throughWall) {
    ask(!resistsContents(job, laminate.resists), 'laminate resists');
    const where = unbonded(job, found);
    // Without a rim it is asked for by itself.
    const energy = where === undefined ? laminate.energyReleaseRate : energyOver(job, where)?.energy;
    const tested = laminate.holeTests !== undefined;
    ask(energy === undefined && !tested && filler?.underWholeWrap !== true, 'energy release rate');
  }
  if (leaks && seal !== undefined) {
    ask(!resistsContents(job, seal.putty.resists), 'putty resists');
    ask(seal.bands === undefined || seal.collar === undefined || seal.sheet.across === undefined, 'rim of the seal');
  }
  ask(leaks && pressure > 0 && seal === undefined, 'seal');
  if (parts.schedule !== undefined) {
    ask(
      parts.schedule.steps.some(({ id, duration }) => ['putty', 'filler-wait', 'cure'].includes(id) && !duration.known),
      'history',
    );
  }
  return out;
}

/** In service and over the hours that are foreseen. */
function coldestSteel({ service, site }: Job): number {
  const nights = (site.forecast ?? []).map(({ pipeTemperature }) => pipeTemperature);
  return Math.min(
    service.designTemperature,
    service.lowestTemperature ?? service.designTemperature,
    ...nights,
    ...(site.history ?? []).map(({ temperature }) => temperature),
  );
}

function resistsContents({ service, site }: Job, resists: Resists | undefined): boolean {
  if (resists === undefined) return false;
  const hottest = Math.max(service.designTemperature, site.pipeTemperature);
  return resists.contents === service.contents && resists.temperature >= hottest;
}

/** The gravest first, with everything that was found. */
export function verdictOf(job: Job, parts: Parts): { readonly verdict: string; readonly because: readonly string[] } {
  const graver: readonly [string, string[]][] = [
    ['not covered', notCovered(job, parts)],
    ['not repairable', notRepairable(job, parts)],
    ['needs input', missing(job, parts)],
  ];
  const because = graver.flatMap(([verdict, list]) => list.map((each) => `${verdict}: ${each}`));
  return { verdict: graver.find(([, list]) => list.length > 0)?.[0] ?? 'designed', because };
}

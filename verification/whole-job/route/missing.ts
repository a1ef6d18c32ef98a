import { temperatureLimit } from './allowable-strain.js';
import { goesOn } from './apart.js';
import { energyOver } from './bond-over-leak.js';
import { coldestSteel, steelOverHours } from './cure.js';
import { METHODS_NEED_METAL } from './how-far.js';
import { unbonded } from './leak.js';
import { alongPipe } from './loads-of-case.js';
import type { Parts } from './parts.js';
import { growthUnknown, leaksNow } from './pipe-as-found.js';
import type { Job, Resists } from './read-job.js';

/** Fibre of 72 GPa in six tenths of a ply and resin of 3 GPa in the rest, all of it one way. */
const STIFFEST_GLASS = 45e9;

/** What a design to sign still needs. */
export function missing(job: Job, parts: Parts): string[] {
  const { service, defect, laminate, filler, acceptance, assessment, line, loads, repair, pipe, seal, site } = job;
  const { found } = parts;
  const out: string[] = [];
  const ask = (when: boolean, what: string): void => {
    if (when) out.push(what);
  };
  ask(growthUnknown(job), 'growth');
  if (growthUnknown(job)) return out;
  ask(defect.growth === undefined && job.apart.some(goesOn), 'growth beside the repair');
  ask(defect.neighbours === undefined, 'neighbours');
  ask(loads.heldLine === undefined, 'held line');
  const held = loads.heldLine !== undefined && loads.heldLine !== 'none';
  ask(held && service.lowestTemperature === undefined, 'coldest steel of a held line');
  ask(service.designTemperature > 333.15 && !service.hazards.includes('hot'), 'hot contents that nobody calls hot');
  ask(job.fitting?.kind === 'bend' && job.fitting.bendRadius === undefined, 'radius of the bend');
  ask(service.surge === undefined, 'surge');
  const cracking = service.cracking;
  ask(cracking === undefined || (cracking !== 'none' && isOld(job.date, cracking.test)), 'cracking');
  ask(defect.nearestAttachment === undefined, 'nearest attachment');
  ask(laminate.transitionCuredAt === undefined, 'cure of the sample');
  const stiffAsCarbon = Math.max(laminate.hoopModulus, laminate.axialModulus) > STIFFEST_GLASS;
  const isolates = laminate.fibre === 'carbon' || stiffAsCarbon;
  ask(laminate.fibre === undefined || (isolates && laminate.isolatingLayer === undefined), 'fibre');
  ask(alongPipe(job, found.outsideDiameter).push < 0 && loads.freeSpan === undefined, 'free span');
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
  ask(job.apart.length > 0 && factor === undefined, 'factor for a neighbouring loss');
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

function resistsContents({ service, site }: Job, resists: Resists | undefined): boolean {
  if (resists === undefined) return false;
  const hottest = Math.max(service.designTemperature, site.pipeTemperature);
  return resists.contents === service.contents && resists.temperature >= hottest;
}

/** A crack test that was not made, or more than 90 days before the survey, clears nothing (docs/case.md). */
function isOld(survey: string | undefined, test: { readonly date: string } | undefined): boolean {
  if (survey === undefined || test === undefined) return true;
  return Date.parse(survey) - Date.parse(test.date) > 90 * 86_400_000;
}

import { breakingStress, poissonRatioLimit } from '../../laminate/index.js';
import { reaches } from '../../numeric/index.js';
import { circumference, outsideRadius } from '../../pipe/index.js';
import { isDay } from '../../quantity/clock.js';
import {
  type Length,
  line,
  roundedDown,
  roundedUp,
  type Stress,
  type Temperature,
  type Time,
} from '../../quantity/index.js';
import { plyDensity } from '../../resin/index.js';
import { practice } from '../../rules/index.js';
import type { CureSheet, LaminateSystem, PipeAsBuilt, RepairCase, Service } from './case.js';
import { atLeast, atMost, type Note } from './contradiction.js';
import { inConfirmed } from './contradictions-confirmed.js';
import { inDefect } from './contradictions-defect.js';
import { inTexts } from './contradictions-texts.js';
import { diameterOf } from './diameter.js';

/** Every rule between fields of a case that are right by themselves: the one list that both doors go by. */
export function contradictions(repairCase: RepairCase, note: Note): void {
  const { pipe, defect, laminate, filler, seal } = repairCase;
  if ((pipe.outsideDiameter === undefined) === (pipe.circumference === undefined)) {
    note({ path: 'pipe.outsideDiameter', must: line('be given, or the circumference: one of the two, not both') });
    return;
  }
  const outsideDiameter = diameterOf(pipe);
  const radius = outsideRadius({ outsideDiameter });
  inPipe(pipe, radius, note);
  inDefect(defect, pipe, pipe.circumference ?? circumference({ outsideDiameter }), note);
  inService(repairCase, note);
  inFluid(repairCase, note);
  inTexts(repairCase, note);
  inLaminate(laminate, note);
  inPly(repairCase, note);
  inWrap(repairCase.wrap, note);
  inFitting(repairCase, radius, note);
  inConfirmed(repairCase, note);
  if (filler !== 'none') {
    const { thickness, thicknessOverDefect, cure } = filler;
    if (thicknessOverDefect < thickness) {
      const beside = ['the thickness beside the defect', 'length', thickness, 'filler.thickness'] as const;
      atLeast(note, 'filler.thicknessOverDefect', beside);
    }
    inCure(cure, 'filler.cure', note);
  }
  if (seal !== undefined) inCure(seal.putty.cure, 'seal.putty.cure', note);
}

function inPipe({ wallThickness, material }: PipeAsBuilt, radius: Length, note: Note): void {
  const { yieldStrength, tensileStrength, allowableStress } = material;
  const strength = ['the yield strength', 'stress', yieldStrength, 'pipe.material.yieldStrength'] as const;
  const must = 'be below half the outside diameter, {0}';
  if (!(wallThickness < radius))
    note({ path: 'pipe.wallThickness', must: line(must, roundedDown('half the diameter', 'length', radius)) });
  if (tensileStrength !== undefined && tensileStrength < yieldStrength)
    atLeast(note, 'pipe.material.tensileStrength', strength);
  if (allowableStress !== undefined && allowableStress > yieldStrength)
    atMost(note, 'pipe.material.allowableStress', strength);
}

/** A bend has a radius, and nothing else has one; a tighter bend than half the diameter would cut into itself. */
function inFitting({ fitting }: RepairCase, radius: Length, note: Note): void {
  if (fitting === 'none' || fitting.bendRadius === undefined) return;
  const path = 'fitting.bendRadius';
  if (fitting.kind !== 'bend') {
    note({ path, must: line(`be left out where the fitting is a ${fitting.kind}, not a bend`) });
    return;
  }
  if (fitting.bendRadius > radius) return;
  const passes = roundedUp('half the diameter', 'length', radius);
  note({ path, must: line('be above half the outside diameter, {0}', passes), passes });
}

/** Age, order and end of life count from the survey. */
function inService({ service, date, loads: { cycles }, line: atWork }: RepairCase, note: Note): void {
  const { designTemperature, lowestTemperature, designPressure, phase } = service;
  if (lowestTemperature !== undefined && lowestTemperature > designTemperature) {
    const design = ['the design temperature', 'temperature', designTemperature, 'service.designTemperature'] as const;
    atMost(note, 'service.lowestTemperature', design);
  }
  const pressure = ['the design pressure', 'gauge pressure', designPressure, 'service.designPressure'] as const;
  if (cycles !== 'none') {
    const { lowestPressure, highestPressure } = cycles;
    if (highestPressure < lowestPressure) {
      const what = 'the lowest pressure of the cycle';
      const lowest = [what, 'gauge pressure', lowestPressure, 'loads.cycles.lowestPressure'] as const;
      atLeast(note, 'loads.cycles.highestPressure', lowest);
    }
    if (highestPressure > designPressure) atMost(note, 'loads.cycles.highestPressure', pressure);
  }
  if (atWork.state !== 'empty, dry, isolated, vented' && atWork.pressure > designPressure)
    atMost(note, 'line.pressure', pressure);
  if (atWork.state === 'static head' && phase === 'gas')
    note({ path: 'line.state', must: line('be "under pressure": gas has no static head') });
  if (date !== undefined && !isDay(date))
    note({ path: 'date', must: line('be the day of the survey, written as 2026-03-14') });
  inRecentPressure(service, date, note);
  inCrackTest(service, date, note);
}

/** A pressure that lifts a limit has to be one that the line has carried: on a day, before the survey. */
function inRecentPressure({ recentPressure: recent }: Service, date: string | undefined, note: Note): void {
  if (recent === undefined) return;
  const path = 'service.recentPressure.date';
  if (!isDay(recent.date)) note({ path, must: line('be the day of the reading, written as 2026-03-01') });
  else if (date !== undefined && recent.date > date)
    note({ path, must: line('be no later than the survey, or it is no reading'), limit: 'date' });
}

/** What a test found stands in its result, and a method that tells of cracks says another thing than the result. */
const FINDING =
  /(?<!\bfor )\bcracks\b|\bcrack(?:s|ed)? (?:was |were )?(?:found|seen|present|indicated)|\bfail(?:ed|s|ure)?\b|\bindications?\b/iu;

/** The test that clears cracking service: a method by its name, on a day. */
function inCrackTest({ cracking }: Service, survey: string | undefined, note: Note): void {
  if (cracking === undefined || cracking === 'none' || cracking.test === undefined) return;
  const { method, date } = cracking.test;
  const path = 'service.cracking.test';
  if (!isDay(date)) note({ path: `${path}.date`, must: line('be the day of the test, written as 2026-03-12') });
  else if (survey !== undefined && date > survey)
    note({ path: `${path}.date`, must: line('be no later than the survey, or it is no test'), limit: 'date' });
  if (!FINDING.test(method)) return;
  const must = 'name the method and nothing that it found: a crack that was found is a defect of kind "crack"';
  note({ path: `${path}.method`, must: line(must) });
}

/** What leaves through the hole is what the line carries. */
function inFluid({ service: { phase }, seal }: RepairCase, note: Note): void {
  const fluid = seal?.fluid?.phase;
  if (fluid === undefined || phase === 'two-phase' || fluid === phase) return;
  note({ path: 'seal.fluid.phase', must: line('be the phase of the contents'), limit: 'service.phase' });
}

function inLaminate(laminate: LaminateSystem, note: Note): void {
  const { poissonRatio, hoopModulus, axialModulus, energyReleaseRate, holeTests, cure } = laminate;
  const most = poissonRatioLimit({ hoopModulus, axialModulus });
  if (!(poissonRatio < most)) {
    const root = 'be below the square root of hoop modulus over axial modulus, {0}';
    const must = line(`${root}, or the laminate would give energy when strained`, roundedDown('limit', 'number', most));
    note({ path: 'laminate.poissonRatio', must });
  }
  if (energyReleaseRate !== undefined && holeTests !== undefined)
    note({ path: 'laminate.holeTests', must: line('be given, or the energy release rate: one of the two, not both') });
  const { glassTransition: dry, wetGlassTransition: wet } = laminate;
  if (dry !== undefined && wet !== undefined && wet > dry) {
    const glass = ['that of a dry sample', 'temperature', dry, 'laminate.glassTransition'] as const;
    atMost(note, 'laminate.wetGlassTransition', glass, ', since water softens a resin');
  }
  inLongTermStrength(laminate, note);
  inCure(cure, 'laminate.cure', note);
}

/** Two series of tests are of two temperatures; and what a laminate holds for years it holds for a minute too. */
function inLongTermStrength({ hoopModulus, strainToFailure, longTermStrength }: LaminateSystem, note: Note): void {
  if (longTermStrength === undefined) return;
  const { strength, testTemperature, second } = longTermStrength;
  const path = 'laminate.longTermStrength';
  if (testTemperature !== undefined && second !== undefined) {
    inTwoSeries({ strength, testTemperature }, second, note);
  }
  if (strainToFailure === undefined) return;
  const breaks = breakingStress({ modulus: hoopModulus, failureStrain: strainToFailure });
  const limit = ['what the laminate breaks at, its hoop modulus by its strain to failure', 'stress', breaks] as const;
  if (strength > breaks) atMost(note, `${path}.strength`, limit);
  if (second !== undefined && second.strength > breaks) atMost(note, `${path}.second.strength`, limit);
}

/** A series of long-term tests. */
interface Series {
  readonly strength: Stress;
  readonly testTemperature: Temperature;
}

/** Warmth weakens a laminate: what rises with it is a slip of a digit, or two series that were exchanged. */
function inTwoSeries(one: Series, other: Series, note: Note): void {
  const [path, second] = ['laminate.longTermStrength', 'laminate.longTermStrength.second'];
  const { testTemperature: first } = one;
  const { testTemperature: then } = other;
  if (reaches(first, then) && reaches(then, first)) {
    const must = line('be another temperature: of two series at one and the same the lower strength alone counts');
    note({ path: `${second}.testTemperature`, must, limit: `${path}.testTemperature` });
  }
  const colder = 'the strength of the colder tests';
  const because = ', since warmth weakens a laminate';
  if (!reaches(then, first) && one.strength > other.strength)
    atMost(note, `${path}.strength`, [colder, 'stress', other.strength, `${second}.strength`], because);
  if (!reaches(first, then) && other.strength > one.strength)
    atMost(note, `${second}.strength`, [colder, 'stress', one.strength, `${path}.strength`], because);
}

/** Fabric, share of fibre and thickness of a ply are of one laminate: a thin fabric in a thick ply would be missed in every ply. */
function inPly({ resin, laminate: { plyThickness } }: RepairCase, note: Note): void {
  if (resin === 'none') return;
  const { fabricWeight: arealWeight, fibreMassFraction } = resin;
  const density = plyDensity({ arealWeight, fibreMassFraction, plyThickness });
  const path = 'laminate.plyThickness';
  const limit = 'resin.fabricWeight';
  if (density < practice.lightestPly.value)
    note({ path, must: line('be less: so little fabric in its share of fibre makes no ply of this thickness'), limit });
  if (density > practice.heaviestPly.value)
    note({ path, must: line('be more: so much fabric in its share of fibre does not lie in this thickness'), limit });
}

function inWrap({ form, width }: RepairCase['wrap'], note: Note): void {
  const least = practice.leastSheetWidth.value;
  if (form === 'sheet' && width < least) atLeast(note, 'wrap.width', ['twice the side lap of sheets', 'length', least]);
}

function inCure(cure: CureSheet, path: string, note: Note): void {
  if (cure.mechanism === 'moisture') {
    for (const [index, row] of cure.rows.entries()) inTimes(row, `${path}.rows[${index}]`, note);
    return;
  }
  inTimes(cure, path, note);
  const { referenceTemperature: stated, testedFrom, testedTo } = cure;
  const reference = ['the reference temperature', 'temperature', stated, `${path}.referenceTemperature`] as const;
  const because = ', since the stated times were tested there';
  if (testedFrom > stated) atMost(note, `${path}.testedFrom`, reference, because);
  if (testedTo < stated) atLeast(note, `${path}.testedTo`, reference, because);
}

function inTimes({ cureTime, workingTime }: { cureTime: Time; workingTime: Time }, path: string, note: Note): void {
  if (workingTime > cureTime)
    atMost(note, `${path}.workingTime`, ['the cure time', 'time', cureTime, `${path}.cureTime`]);
}

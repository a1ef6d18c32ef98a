import { poissonRatioLimit } from '../../laminate/index.js';
import { outsideDiameterFromCircumference, outsideRadius } from '../../pipe/index.js';
import { type Length, line, roundedDown, roundedUp } from '../../quantity/index.js';
import { practice } from '../../rules/index.js';
import type { CureSheet, Filler, LaminateSystem, PipeAsBuilt, RepairCase, Service } from './case.js';
import type { Note } from './contradiction.js';
import { inDefect } from './contradictions-defect.js';

/** Every rule between fields of a case that are right by themselves: the one list that both doors go by. */
export function contradictions(repairCase: RepairCase, note: Note): void {
  const { pipe, service, defect, laminate, filler, seal } = repairCase;
  inPipe(pipe, note);
  inService(service, note);
  inDefect(defect, pipe, note);
  inPressures(repairCase, note);
  inLaminate(laminate, note);
  inWrap(repairCase.wrap, note);
  if (filler !== 'none') inFiller(filler, note);
  if (seal !== undefined) inCure(seal.putty.cure, 'seal.putty.cure', note);
}

function inPipe({ outsideDiameter, circumference, wallThickness, material }: PipeAsBuilt, note: Note): void {
  const path = 'pipe.material';
  const { yieldStrength, tensileStrength, allowableStress } = material;
  if ((outsideDiameter === undefined) === (circumference === undefined)) {
    note({ path: 'pipe.outsideDiameter', must: line('be given, or the circumference: one of the two, not both') });
  } else {
    const radius = outsideRadius({ outsideDiameter: outsideDiameter ?? diameterBy(circumference as Length) });
    const limit = roundedDown('half the outside diameter', 'length', radius);
    if (!(wallThickness < radius))
      note({ path: 'pipe.wallThickness', must: line('be below half the outside diameter, {0}', limit) });
  }
  if (tensileStrength !== undefined && tensileStrength < yieldStrength) {
    const passes = roundedUp('yield strength', 'stress', yieldStrength);
    const must = line('be at least the yield strength, {0}', passes);
    note({ path: `${path}.tensileStrength`, must, limit: `${path}.yieldStrength`, passes });
  }
  if (allowableStress !== undefined && allowableStress > yieldStrength) {
    const passes = roundedDown('yield strength', 'stress', yieldStrength);
    const must = line('be at most the yield strength, {0}', passes);
    note({ path: `${path}.allowableStress`, must, limit: `${path}.yieldStrength`, passes });
  }
}

function diameterBy(circumference: Length): Length {
  return outsideDiameterFromCircumference({ circumference });
}

function inService({ designTemperature, lowestTemperature }: Service, note: Note): void {
  if (lowestTemperature === undefined || lowestTemperature <= designTemperature) return;
  const passes = roundedDown('design temperature', 'temperature', designTemperature);
  const must = line('be at most the design temperature, {0}', passes);
  note({ path: 'service.lowestTemperature', must, limit: 'service.designTemperature', passes });
}

function inPressures({ service, loads: { cycles }, line: atWork }: RepairCase, note: Note): void {
  const { designPressure } = service;
  if (cycles !== 'none' && cycles.highestPressure < cycles.lowestPressure) {
    const passes = roundedUp('lowest pressure', 'gauge pressure', cycles.lowestPressure);
    const must = line('be at least the lowest pressure of the cycle, {0}', passes);
    note({ path: 'loads.cycles.highestPressure', must, limit: 'loads.cycles.lowestPressure', passes });
  }
  const beyond = (path: string): void => {
    const passes = roundedDown('design pressure', 'gauge pressure', designPressure);
    const must = line('be at most the design pressure, {0}', passes);
    note({ path, must, limit: 'service.designPressure', passes });
  };
  if (cycles !== 'none' && cycles.highestPressure > designPressure) beyond('loads.cycles.highestPressure');
  if (atWork.state !== 'empty, dry, isolated, vented' && atWork.pressure > designPressure) beyond('line.pressure');
}

function inLaminate({ poissonRatio, hoopModulus, axialModulus, cure }: LaminateSystem, note: Note): void {
  const most = poissonRatioLimit({ hoopModulus, axialModulus });
  if (!(poissonRatio < most)) {
    const limit = roundedDown("limit of Poisson's ratio", 'number', most);
    const must =
      'be below the square root of hoop modulus over axial modulus, {0}, or the laminate would give energy when strained';
    note({ path: 'laminate.poissonRatio', must: line(must, limit) });
  }
  inCure(cure, 'laminate.cure', note);
}

function inWrap({ form, width }: RepairCase['wrap'], note: Note): void {
  const least = practice.leastSheetWidth.value;
  if (form !== 'sheet' || width >= least) return;
  const passes = roundedUp('width of a sheet', 'length', least);
  note({ path: 'wrap.width', must: line('be at least twice the side lap of sheets, {0}', passes), passes });
}

function inFiller({ thickness, thicknessOverDefect, cure }: Filler, note: Note): void {
  if (thicknessOverDefect < thickness) {
    const passes = roundedUp('thickness beside the defect', 'length', thickness);
    const must = line('be at least the thickness beside the defect, {0}', passes);
    note({ path: 'filler.thicknessOverDefect', must, limit: 'filler.thickness', passes });
  }
  inCure(cure, 'filler.cure', note);
}

function inCure(cure: CureSheet, path: string, note: Note): void {
  if (cure.mechanism === 'moisture') {
    for (const [index, row] of cure.rows.entries()) inTimes(row, `${path}.rows[${index}]`, note);
    return;
  }
  inTimes(cure, path, note);
  const { referenceTemperature, testedFrom, testedTo } = cure;
  const limit = `${path}.referenceTemperature`;
  if (testedFrom > referenceTemperature) {
    const passes = roundedDown('reference temperature', 'temperature', referenceTemperature);
    const must = line('be at most the reference temperature, {0}, since the stated times were tested there', passes);
    note({ path: `${path}.testedFrom`, must, limit, passes });
  }
  if (testedTo < referenceTemperature) {
    const passes = roundedUp('reference temperature', 'temperature', referenceTemperature);
    const must = line('be at least the reference temperature, {0}, since the stated times were tested there', passes);
    note({ path: `${path}.testedTo`, must, limit, passes });
  }
}

type Times = Extract<CureSheet, { readonly mechanism: 'two-part reaction' }>;

function inTimes({ cureTime, workingTime }: Pick<Times, 'cureTime' | 'workingTime'>, path: string, note: Note): void {
  if (workingTime <= cureTime) return;
  const passes = roundedDown('cure time', 'time', cureTime);
  const must = line('be at most the cure time, {0}', passes);
  note({ path: `${path}.workingTime`, must, limit: `${path}.cureTime`, passes });
}

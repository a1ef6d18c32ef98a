import {
  atLeast,
  atMost,
  below,
  finite,
  nonNegative,
  oneOf,
  positive,
  properFraction,
  refuse,
  wholeNumber,
  within,
} from '../../formula/index.js';
import type { CureSheet, Filler, LaminateSystem, PipeAsBuilt, RepairCase } from './case.js';
import { checkDefect } from './checks-defect.js';

/**
 * Refuses a case whose numbers contradict each other or can never be right, before anything is computed. The error names
 * the field by its path in the case.
 *
 * @throws CalculationError `invalid-input`
 */
export function checkCase(repairCase: RepairCase): void {
  const { pipe, service, defect, loads, repair, laminate, wrap, resin, filler, site } = repairCase;
  checkPipe(pipe);
  nonNegative(service.designPressure, 'service.designPressure', 'Pa');
  positive(service.designTemperature, 'service.designTemperature', 'K');
  if (service.lowestTemperature !== undefined) positive(service.lowestTemperature, 'service.lowestTemperature', 'K');
  if (service.recentPressure !== undefined)
    positive(service.recentPressure.pressure, 'service.recentPressure.pressure', 'Pa');
  checkDefect(defect, pipe.wallThickness);
  if (loads.axialForce !== 'none') finite(loads.axialForce, 'loads.axialForce', 'N');
  if (loads.cycles !== 'none') {
    positive(loads.cycles.number, 'loads.cycles.number', '');
    nonNegative(loads.cycles.lowestPressure, 'loads.cycles.lowestPressure', 'Pa');
    positive(loads.cycles.highestPressure, 'loads.cycles.highestPressure', 'Pa');
    within(loads.cycles.lowestPressure, 0, loads.cycles.highestPressure, 'loads.cycles.lowestPressure', 'Pa');
    atMost(
      loads.cycles.highestPressure,
      service.designPressure,
      'the design pressure',
      'loads.cycles.highestPressure',
      'Pa',
    );
  }
  positive(repair.life, 'repair.life', 's');
  within(repair.class, 1, 3, 'repair.class', '');
  wholeNumber(repair.class, 1, 'repair.class');
  if (repair.availableOverlap !== undefined) nonNegative(repair.availableOverlap, 'repair.availableOverlap', 'm');
  checkLine(repairCase);
  checkLaminate(laminate);
  positive(wrap.width, 'wrap.width', 'm');
  if (wrap.form === 'sheet') atLeast(wrap.width, 0.05, 'twice the side lap of sheets', 'wrap.width', 'm');
  positive(wrap.rollLength, 'wrap.rollLength', 'm');
  if (wrap.form === 'tape') properFraction(wrap.overlap, 'wrap.overlap');
  if (wrap.waste !== undefined) properFraction(wrap.waste, 'wrap.waste');
  if (resin !== 'none') {
    positive(resin.fabricWeight, 'resin.fabricWeight', 'kg/m2');
    positive(resin.fibreMassFraction, 'resin.fibreMassFraction', '');
    properFraction(resin.fibreMassFraction, 'resin.fibreMassFraction');
    checkMixed(resin, 'resin');
  }
  if (filler !== 'none') checkFiller(filler);
  positive(site.pipeTemperature, 'site.pipeTemperature', 'K');
  positive(site.airTemperature, 'site.airTemperature', 'K');
  within(site.relativeHumidity, 0, 1, 'site.relativeHumidity', '');
  if (site.history !== undefined && site.history.length === 0) {
    refuse({
      code: 'invalid-input',
      parameter: 'site.history',
      value: 'empty',
      unit: '',
      constraint: 'must hold at least one step, or be left out',
    });
  }
}

function checkPipe(pipe: PipeAsBuilt): void {
  const { outsideDiameter: D, circumference: C, wallThickness: t, material } = pipe;
  if ((D === undefined) === (C === undefined)) {
    refuse({
      code: 'invalid-input',
      parameter: 'pipe.outsideDiameter',
      value: D === undefined ? 'not given' : 'given with the circumference',
      unit: '',
      constraint: 'give the outside diameter or the circumference, one of the two',
    });
  }
  if (D !== undefined) positive(D, 'pipe.outsideDiameter', 'm');
  if (C !== undefined) positive(C, 'pipe.circumference', 'm');
  const diameter = D ?? (C ?? 0) / Math.PI;
  positive(t, 'pipe.wallThickness', 'm');
  below(t, diameter / 2, 'half the outside diameter', 'pipe.wallThickness', 'm');
  positive(material.yieldStrength, 'pipe.material.yieldStrength', 'Pa');
  if (material.tensileStrength !== undefined) positive(material.tensileStrength, 'pipe.material.tensileStrength', 'Pa');
  if (material.allowableStress !== undefined) {
    positive(material.allowableStress, 'pipe.material.allowableStress', 'Pa');
    atMost(
      material.allowableStress,
      material.yieldStrength,
      'the yield strength',
      'pipe.material.allowableStress',
      'Pa',
    );
  }
  if (material.modulus !== undefined) positive(material.modulus, 'pipe.material.modulus', 'Pa');
}

function checkLine({ line, service }: RepairCase): void {
  oneOf(line.state, ['under pressure', 'static head', 'empty, dry, isolated, vented'], 'line.state');
  if (line.state === 'empty, dry, isolated, vented') {
    if (!('pressure' in line) || line.pressure === undefined) return;
    const constraint = 'must be left out: an empty, vented line has no pressure';
    refuse({ code: 'invalid-input', parameter: 'line.pressure', value: line.pressure, unit: 'Pa', constraint });
  }
  const { writtenProcedure } = line;
  if (typeof writtenProcedure !== 'string' || writtenProcedure.trim() === '') {
    const constraint = "must be the number of the site's written procedure, or none";
    refuse({
      code: 'invalid-input',
      parameter: 'line.writtenProcedure',
      value: writtenProcedure,
      unit: '',
      constraint,
    });
  }
  positive(line.pressure, 'line.pressure', 'Pa');
  atMost(line.pressure, service.designPressure, 'the design pressure', 'line.pressure', 'Pa');
}

function checkLaminate(laminate: LaminateSystem): void {
  positive(laminate.hoopModulus, 'laminate.hoopModulus', 'Pa');
  positive(laminate.axialModulus, 'laminate.axialModulus', 'Pa');
  within(laminate.poissonRatio, 0, 1, 'laminate.poissonRatio', '');
  positive(laminate.plyThickness, 'laminate.plyThickness', 'm');
  if (laminate.strainToFailure !== undefined) {
    positive(laminate.strainToFailure, 'laminate.strainToFailure', '');
    // Nothing that a pipe is wrapped with stretches by a fifth: a per cent sign was left out.
    below(laminate.strainToFailure, 0.2, '20 %', 'laminate.strainToFailure', '');
  }
  if (laminate.shearModulus !== undefined) positive(laminate.shearModulus, 'laminate.shearModulus', 'Pa');
  if (laminate.energyReleaseRate !== undefined)
    positive(laminate.energyReleaseRate, 'laminate.energyReleaseRate', 'J/m2');
  if (laminate.lapShearStrength !== undefined) positive(laminate.lapShearStrength, 'laminate.lapShearStrength', 'Pa');
  checkCure(laminate.cure, 'laminate.cure');
}

function checkFiller(filler: Filler): void {
  positive(filler.thickness, 'filler.thickness', 'm');
  positive(filler.thicknessOverDefect, 'filler.thicknessOverDefect', 'm');
  within(filler.thickness, 0, filler.thicknessOverDefect, 'filler.thickness', 'm');
  positive(filler.density, 'filler.density', 'kg/m3');
  checkMixed(filler, 'filler');
  checkCure(filler.cure, 'filler.cure');
}

/** What both two-part materials that are mixed on site have. */
function checkMixed({ kitMass, rate, parts }: Pick<Filler, 'kitMass' | 'rate' | 'parts'>, path: string): void {
  positive(kitMass, `${path}.kitMass`, 'kg');
  positive(rate, `${path}.rate`, 'kg/s');
  positive(parts.base, `${path}.parts.base`, '');
  positive(parts.hardener, `${path}.parts.hardener`, '');
}

function checkCure(cure: CureSheet, path: string): void {
  if (cure.mechanism === 'moisture') {
    if (cure.rows.length === 0) {
      refuse({
        code: 'invalid-input',
        parameter: `${path}.rows`,
        value: 'empty',
        unit: '',
        constraint: "must hold at least one row of the maker's times",
      });
    }
    return;
  }
  positive(cure.referenceTemperature, `${path}.referenceTemperature`, 'K');
  positive(cure.cureTime, `${path}.cureTime`, 's');
  positive(cure.workingTime, `${path}.workingTime`, 's');
  positive(cure.testedFrom, `${path}.testedFrom`, 'K');
  atLeast(cure.testedTo, cure.testedFrom, 'the lowest tested temperature', `${path}.testedTo`, 'K');
  positive(cure.minimumTemperature, `${path}.minimumTemperature`, 'K');
}

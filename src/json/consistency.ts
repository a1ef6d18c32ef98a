import { writeQuantity } from '../quantity/index.js';
import type { RepairCase, Service } from '../repair/case/case.js';
import { type CaseIssue, shown, writtenPath } from './case-error.js';
import { inDefect } from './consistent-defect.js';
import { inMaterials } from './consistent-materials.js';
import { type Contradiction, inMegapascals, inMillimetres, outsideDiameter } from './contradiction.js';
import { ALLOWABLE_STRESS } from './look-up.js';
import { valueAt } from './schema-walk.js';

/**
 * What contradicts itself in a case whose every field is right by itself: a defect deeper than the wall, points out of
 * order. Each issue quotes the texts that clash, and gives a text that would not.
 */
export function contradictions(repairCase: RepairCase, document: unknown): CaseIssue[] {
  return [
    ...inPipe(repairCase),
    ...inService(repairCase.service),
    ...inDefect(repairCase),
    ...inPressures(repairCase),
    ...inMaterials(repairCase),
  ].map((contradiction) => {
    const { path, limit } = contradiction;
    // A limit that is itself a field of the document is quoted as it was typed.
    const typed = limit && valueAt(document, limit.at);
    const limitText = typeof typed === 'string' ? typed.trim() : limit?.text;
    const must = contradiction.must.replace('{limit}', limitText ?? '');
    const example = contradiction.example ?? limitText;
    const value = valueAt(document, path);
    const is = value === undefined ? 'is left out' : `is ${shown(value)}`;
    const such = example === undefined ? '' : `, for example ${JSON.stringify(example)}`;
    const at = writtenPath(path);
    const issue = { path: at, value, expected: must, message: `${at} ${is}; it must ${must}${such}` };
    return example === undefined ? issue : { ...issue, example };
  });
}

function* inPipe({ pipe, lookedUp = [] }: RepairCase): Generator<Contradiction> {
  const { wallThickness: t, material } = pipe;
  const radius = outsideDiameter(pipe) / 2;
  if (!(t < radius)) {
    const limit = inMillimetres(radius);
    yield {
      path: ['pipe', 'wallThickness'],
      must: `be below half the outside diameter, ${limit}`,
      example: inMillimetres(radius / 10),
    };
  }
  const { yieldStrength, tensileStrength, allowableStress } = material;
  if (tensileStrength !== undefined && tensileStrength < yieldStrength) {
    yield {
      path: ['pipe', 'material', 'tensileStrength'],
      must: 'be at least the yield strength, {limit}',
      limit: { at: ['pipe', 'material', 'yieldStrength'], text: inMegapascals('stress', yieldStrength) },
    };
  }
  if (allowableStress !== undefined && allowableStress > yieldStrength) {
    const fromRow = lookedUp.find(({ name }) => name === ALLOWABLE_STRESS);
    const given = inMegapascals('stress', allowableStress);
    yield {
      path: ['pipe', 'material', 'allowableStress'],
      must: `${fromRow === undefined ? 'be' : `give, instead of ${given},`} at most the yield strength, {limit}`,
      limit: { at: ['pipe', 'material', 'yieldStrength'], text: inMegapascals('stress', yieldStrength) },
    };
  }
}

function* inService({ designTemperature, lowestTemperature }: Service): Generator<Contradiction> {
  if (lowestTemperature === undefined || lowestTemperature <= designTemperature) return;
  yield {
    path: ['service', 'lowestTemperature'],
    must: 'be at most the design temperature, {limit}',
    limit: { at: ['service', 'designTemperature'], text: writeQuantity('temperature', designTemperature, 'degC') },
  };
}

function* inPressures({ service, loads: { cycles }, line }: RepairCase): Generator<Contradiction> {
  const { designPressure } = service;
  const live = line.state === 'empty, dry, isolated, vented' ? 0 : line.pressure;
  const belowDesign = {
    must: 'be at most the design pressure, {limit}',
    limit: { at: ['service', 'designPressure'], text: inMegapascals('gauge pressure', designPressure) },
  };
  if (cycles !== 'none' && cycles.highestPressure < cycles.lowestPressure) {
    yield {
      path: ['loads', 'cycles', 'highestPressure'],
      must: 'be at least the lowest pressure of the cycle, {limit}',
      limit: {
        at: ['loads', 'cycles', 'lowestPressure'],
        text: inMegapascals('gauge pressure', cycles.lowestPressure),
      },
    };
  }
  if (cycles !== 'none' && cycles.highestPressure > designPressure)
    yield { path: ['loads', 'cycles', 'highestPressure'], ...belowDesign };
  if (live > designPressure) yield { path: ['line', 'pressure'], ...belowDesign };
}

import { writeQuantity } from '../quantity/index.js';
import type { CureSheet, Filler, LaminateSystem, RepairCase } from '../repair/case/case.js';
import { type Contradiction, inMillimetres, type Path } from './contradiction.js';

/** What contradicts itself in the laminate, the tape or sheet, and the filler. */
export function* inMaterials({ laminate, wrap, filler }: RepairCase): Generator<Contradiction> {
  yield* inLaminate(laminate);
  yield* inWrap(wrap);
  yield* inFiller(filler);
}

function* inLaminate({ poissonRatio, hoopModulus, axialModulus, cure }: LaminateSystem): Generator<Contradiction> {
  const most = Math.sqrt(hoopModulus / axialModulus);
  if (!(poissonRatio < most)) {
    yield {
      path: ['laminate', 'poissonRatio'],
      must: `be below the square root of hoop modulus over axial modulus, ${most.toPrecision(3)}, or the laminate would give energy when strained`,
      example: 0.12,
    };
  }
  yield* inCure(cure, ['laminate', 'cure']);
}

/** Neighbouring sheets lap by 25 mm. */
const LEAST_SHEET = 0.05;

function* inWrap({ form, width }: RepairCase['wrap']): Generator<Contradiction> {
  if (form !== 'sheet' || width >= LEAST_SHEET) return;
  const least = inMillimetres(LEAST_SHEET);
  yield { path: ['wrap', 'width'], must: `be at least twice the side lap of sheets, ${least}`, example: least };
}

function* inFiller(filler: Filler | 'none'): Generator<Contradiction> {
  if (filler === 'none') return;
  if (filler.thicknessOverDefect < filler.thickness) {
    yield {
      path: ['filler', 'thicknessOverDefect'],
      must: 'be at least the thickness beside the defect, {limit}',
      limit: { at: ['filler', 'thickness'], text: inMillimetres(filler.thickness) },
    };
  }
  yield* inCure(filler.cure, ['filler', 'cure']);
}

function* inCure(cure: CureSheet, path: Path): Generator<Contradiction> {
  const rows = cure.mechanism === 'moisture' ? cure.rows : [cure];
  for (const [index, { cureTime, workingTime }] of rows.entries()) {
    if (workingTime <= cureTime) continue;
    const row = cure.mechanism === 'moisture' ? [...path, 'rows', index] : path;
    yield {
      path: [...row, 'workingTime'],
      must: 'be at most the cure time, {limit}',
      limit: { at: [...row, 'cureTime'], text: writeQuantity('time', cureTime, 'min') },
    };
  }
  if (cure.mechanism === 'moisture') return;
  const { referenceTemperature, testedFrom, testedTo } = cure;
  if (testedFrom > referenceTemperature) {
    yield {
      path: [...path, 'testedFrom'],
      must: 'be at most the reference temperature, {limit}, since the stated times were tested there',
      limit: {
        at: [...path, 'referenceTemperature'],
        text: writeQuantity('temperature', referenceTemperature, 'degC'),
      },
    };
  }
  if (testedTo < referenceTemperature) {
    yield {
      path: [...path, 'testedTo'],
      must: 'be at least the reference temperature, {limit}, since the stated times were tested there',
      limit: {
        at: [...path, 'referenceTemperature'],
        text: writeQuantity('temperature', referenceTemperature, 'degC'),
      },
    };
  }
}

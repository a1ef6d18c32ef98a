import type { Kind, Length, Quantity } from '../quantity/index.js';
import { m, writeQuantity } from '../quantity/index.js';
import type { CureSheet, Filler, LaminateSystem, PressureCycles, ProfilePoint, RepairCase } from '../repair/case.js';
import { type CaseIssue, shown, writtenPath } from './case-error.js';
import { valueAt } from './schema-walk.js';

type Path = readonly (string | number)[];

/** Slack for lengths that were subtracted from each other: a thousandth of a micrometre, below any gauge. */
const SLACK = 1e-9;

/**
 * What contradicts itself in a case whose every field is right by itself: a defect deeper than the wall, points out of
 * order. Each issue quotes the texts that clash, and gives a text that would not.
 */
export function contradictions(repairCase: RepairCase, document: unknown): CaseIssue[] {
  return [
    ...inPipe(repairCase),
    ...inDefect(repairCase),
    ...inCycles(repairCase.loads.cycles),
    ...inLaminate(repairCase.laminate),
    ...inFiller(repairCase.filler),
  ].map((contradiction) => {
    const { path } = contradiction;
    // A limit that is itself a field of the document is quoted as it was typed.
    const typed = contradiction.limit && valueAt(document, contradiction.limit);
    const computed = contradiction.example;
    const example = typeof typed === 'string' ? typed : computed;
    const must =
      contradiction.limit === undefined ? contradiction.must : contradiction.must.replace('{limit}', String(example));
    const value = valueAt(document, path);
    const is = value === undefined ? 'is left out' : `is ${shown(value)}`;
    const such = example === undefined ? '' : `, for example ${JSON.stringify(example)}`;
    const at = writtenPath(path);
    const issue = { path: at, value, expected: must, message: `${at} ${is}; it must ${must}${such}` };
    return example === undefined ? issue : { ...issue, example };
  });
}

interface Contradiction {
  readonly path: Path;
  /** How the sentence "it must ..." ends; `{limit}` stands for the limit. */
  readonly must: string;
  /** The field that sets the limit: its own value would pass. */
  readonly limit?: Path;
  /** A text that would pass; where a field sets the limit, that limit. */
  readonly example?: unknown;
}

function* inPipe({ pipe }: RepairCase): Generator<Contradiction> {
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
      limit: ['pipe', 'material', 'yieldStrength'],
      example: inMegapascals('stress', yieldStrength),
    };
  }
  if (allowableStress !== undefined && allowableStress > yieldStrength) {
    yield {
      path: ['pipe', 'material', 'allowableStress'],
      must: 'be at most the yield strength, {limit}',
      limit: ['pipe', 'material', 'yieldStrength'],
      example: inMegapascals('stress', yieldStrength),
    };
  }
}

function* inDefect({ pipe, defect }: RepairCase): Generator<Contradiction> {
  const { wallThickness: t } = pipe;
  const { kind, axialLength, circumferentialWidth, remainingWall, holeDiameter, profile } = defect;
  const round = Math.PI * outsideDiameter(pipe);
  if (remainingWall > t) {
    yield {
      path: ['defect', 'remainingWall'],
      must: 'be at most the nominal wall, {limit}',
      limit: ['pipe', 'wallThickness'],
      example: inMillimetres(t),
    };
  }
  if (circumferentialWidth > round * (1 + 1e-6)) {
    yield {
      path: ['defect', 'circumferentialWidth'],
      must: `be at most the circumference of the pipe, ${inMillimetres(round)}`,
      example: inMillimetres(circumferentialWidth > 0.1 ? m(0.1) : round),
    };
  }
  if (holeDiameter !== undefined && kind !== 'through-wall hole') {
    yield {
      path: ['defect', 'holeDiameter'],
      must: `be left out where the defect is "${kind}", not a through-wall hole`,
    };
  }
  const across = Math.hypot(axialLength, circumferentialWidth);
  if (holeDiameter !== undefined && holeDiameter > across * (1 + 1e-6)) {
    yield {
      path: ['defect', 'holeDiameter'],
      must: `fit into the defect, which is ${inMillimetres(across)} from corner to corner`,
      example: inMillimetres(Math.min(axialLength, circumferentialWidth)),
    };
  }
  if (profile !== undefined) yield* inProfile(profile, t, remainingWall);
}

function* inProfile(profile: readonly ProfilePoint[], t: Length, remainingWall: Length): Generator<Contradiction> {
  let deepest = 0;
  for (const [index, { position, depth }] of profile.entries()) {
    deepest = Math.max(deepest, depth);
    const before = profile[index - 1]?.position ?? Number.NEGATIVE_INFINITY;
    if (position <= before) {
      yield {
        path: ['defect', 'profile', index, 'position'],
        must: `lie beyond the point before it, ${inMillimetres(before)}, since the points stand in order along the pipe`,
        example: inMillimetres(before + 0.01),
      };
    }
    if (depth > t) {
      yield {
        path: ['defect', 'profile', index, 'depth'],
        must: `be at most the wall, ${inMillimetres(t)}: a defect is not deeper than the wall`,
        example: inMillimetres(t / 2),
      };
    }
  }
  if (deepest <= t && remainingWall <= t && remainingWall > t - deepest + SLACK) {
    yield {
      path: ['defect', 'remainingWall'],
      must: `be at most ${inMillimetres(t - deepest)}, what the deepest point of the profile leaves, since it is the least wall left anywhere in the defect`,
      example: inMillimetres(t - deepest),
    };
  }
}

function* inCycles(cycles: PressureCycles | 'none'): Generator<Contradiction> {
  if (cycles === 'none' || cycles.highestPressure >= cycles.lowestPressure) return;
  yield {
    path: ['loads', 'cycles', 'highestPressure'],
    must: 'be at least the lowest pressure of the cycle, {limit}',
    limit: ['loads', 'cycles', 'lowestPressure'],
    example: inMegapascals('gauge pressure', cycles.lowestPressure),
  };
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

function* inFiller(filler: Filler | 'none'): Generator<Contradiction> {
  if (filler === 'none') return;
  if (filler.thicknessOverDefect < filler.thickness) {
    yield {
      path: ['filler', 'thicknessOverDefect'],
      must: 'be at least the thickness beside the defect, {limit}',
      limit: ['filler', 'thickness'],
      example: inMillimetres(filler.thickness),
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
      limit: [...row, 'cureTime'],
      example: writeQuantity('time', cureTime, 'min'),
    };
  }
  if (cure.mechanism === 'moisture') return;
  const { referenceTemperature, testedFrom, testedTo } = cure;
  if (testedFrom > referenceTemperature) {
    yield {
      path: [...path, 'testedFrom'],
      must: 'be at most the reference temperature, {limit}, since the stated times were tested there',
      limit: [...path, 'referenceTemperature'],
      example: writeQuantity('temperature', referenceTemperature, 'degC'),
    };
  }
  if (testedTo < referenceTemperature) {
    yield {
      path: [...path, 'testedTo'],
      must: 'be at least the reference temperature, {limit}, since the stated times were tested there',
      limit: [...path, 'referenceTemperature'],
      example: writeQuantity('temperature', referenceTemperature, 'degC'),
    };
  }
}

/** The outside diameter, measured straight or round the pipe. */
function outsideDiameter({ outsideDiameter: D, circumference }: RepairCase['pipe']): number {
  return D ?? (circumference ?? 0) / Math.PI;
}

/** A length for a sentence: in full where that is short, else to six digits, which the slack of the checks covers. */
function inMillimetres(value: number): string {
  const exact = writeQuantity('length', value as Length, 'mm');
  return exact.length <= 12 ? exact : `${Number((value * 1000).toPrecision(6))} mm`;
}

function inMegapascals(kind: 'stress' | 'gauge pressure', value: number): string {
  return writeQuantity(kind, value as Quantity<Kind>, 'MPa');
}

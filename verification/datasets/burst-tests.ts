import { readFileSync } from 'node:fs';
import {
  b31gOriginal,
  dnvSingleDefect,
  flowStressMultiple,
  flowStressOffset,
  modifiedB31g,
} from '../../src/pipe/index.js';
import { type GaugePressure, gauge, type Length, length, type Stress, stress } from '../../src/quantity/index.js';

/**
 * Burst tests of corroded pipe against the remaining-strength methods: predicted over measured.
 *
 * The rows were read from two open compilations, hardly ever from the primary papers; `crossCheck` says which. The two may
 * share ancestors, so that their agreement is weak evidence. A shift of a mean shows that a method has changed; no single row
 * proves anything.
 */

/** One test as listed. A strength that the compilations lack is missing. */
export interface BurstTest {
  readonly id: string;
  readonly specimen: string;
  readonly grade: string;
  readonly outsideDiameter: Length;
  readonly wallThickness: Length;
  readonly yieldStrength: Stress | undefined;
  readonly tensileStrength: Stress | undefined;
  readonly defectDepth: Length;
  readonly defectLength: Length;
  readonly defect: string;
  readonly orientation: string;
  readonly burst: GaugePressure;
  readonly crossCheck: string;
  readonly flags: string;
  readonly publication: string;
  /** The part of the id before its first hyphen: one primary publication. */
  readonly group: string;
}

/** The methods that a row of depth and length can be put to. A profile, which the effective area needs, no row has. */
export const burstMethods = ['original B31G', 'modified B31G', 'DNV-RP-F101'] as const;

export type BurstMethod = (typeof burstMethods)[number];

/** How each method is run. */
export const burstMethodNotes: Readonly<Record<BurstMethod, string>> = {
  'original B31G': 'flow stress 1.1 times measured yield',
  'modified B31G': 'flow stress measured yield plus 69 MPa',
  'DNV-RP-F101': 'single defect, factor 1, measured tensile strength',
};

export interface BurstPrediction {
  readonly test: BurstTest;
  readonly method: BurstMethod;
  readonly predicted: GaugePressure;
  /** Predicted over measured; below 1 is safe. */
  readonly ratio: number;
}

/** Mean and standard deviation (n - 1) of predicted over measured; the deviation of a single value is missing. */
export interface BurstStatistics {
  readonly method: BurstMethod;
  readonly group: string;
  readonly n: number;
  readonly mean: number;
  readonly deviation: number | undefined;
}

/**
 * Mean of measured over predicted in 149 tests (Zhou and Huang 2012, source key `zhou-huang-2012`). Its inverse is only
 * roughly comparable with a mean of predicted over measured.
 */
export const zhouHuang2012: Readonly<Partial<Record<BurstMethod, number>>> = {
  'original B31G': 1.473,
  'modified B31G': 1.297,
};

/** The cells of a line; a quoted cell may hold commas. */
function cellsOf(line: string): string[] {
  return [...line.matchAll(/(?:^|,)(?:"(?<quoted>[^"]*)"|(?<bare>[^",]*))/gu)].map(
    ({ groups }) => groups?.['quoted'] ?? groups?.['bare'] ?? '',
  );
}

function strength(text: string): Stress | undefined {
  return text === '' ? undefined : stress.MPa(Number(text));
}

/** Reads the list, and refuses a line whose cells do not match the head. */
export function readBurstTests(): BurstTest[] {
  const [head = '', ...lines] = readFileSync(new URL('burst-tests.csv', import.meta.url), 'utf8')
    .trim()
    .split(/\r?\n/u);
  const names = cellsOf(head);
  return lines.map((line) => {
    const cells = cellsOf(line);
    if (cells.length !== names.length) throw new Error(`burst-tests.csv: ${cells.length} cells in ${line}`);
    const cell = (name: string): string => {
      const index = names.indexOf(name);
      if (index < 0) throw new Error(`burst-tests.csv has no column ${name}`);
      return cells[index] ?? '';
    };
    return {
      id: cell('id'),
      specimen: cell('specimen'),
      grade: cell('grade'),
      outsideDiameter: length.mm(Number(cell('D_mm'))),
      wallThickness: length.mm(Number(cell('t_mm'))),
      yieldStrength: strength(cell('yield_MPa')),
      tensileStrength: strength(cell('uts_MPa')),
      defectDepth: length.mm(Number(cell('d_mm'))),
      defectLength: length.mm(Number(cell('L_mm'))),
      defect: cell('defect'),
      orientation: cell('orientation'),
      burst: gauge.MPa(Number(cell('burst_MPa'))),
      crossCheck: cell('cross_check'),
      flags: cell('flags'),
      publication: cell('primary_source'),
      group: cell('id').split('-')[0] ?? '',
    };
  });
}

/** The failure pressure by a method, or nothing where the test lacks the strength that it needs. */
function predict(method: BurstMethod, test: BurstTest): GaugePressure | undefined {
  const { yieldStrength, tensileStrength } = test;
  if (method === 'DNV-RP-F101') {
    return tensileStrength === undefined ? undefined : dnvSingleDefect({ ...test, tensileStrength });
  }
  if (yieldStrength === undefined) return undefined;
  return method === 'original B31G'
    ? b31gOriginal({ ...test, flowStress: flowStressMultiple({ yieldStrength }) })
    : modifiedB31g({ ...test, flowStress: flowStressOffset({ yieldStrength }) });
}

/** Every prediction for the tests with a longitudinal defect; sound pipe and grooves in other directions are left out. */
export function burstPredictions(tests: readonly BurstTest[] = readBurstTests()): BurstPrediction[] {
  const usable = tests.filter(({ orientation, defectDepth }) => orientation === 'longitudinal' && defectDepth > 0);
  return burstMethods.flatMap((method) =>
    usable.flatMap((test) => {
      const predicted = predict(method, test);
      return predicted === undefined ? [] : [{ test, method, predicted, ratio: predicted / test.burst }];
    }),
  );
}

function statisticsOf(method: BurstMethod, group: string, ratios: readonly number[]): BurstStatistics {
  const n = ratios.length;
  const mean = ratios.reduce((sum, ratio) => sum + ratio, 0) / n;
  const squares = ratios.reduce((sum, ratio) => sum + (ratio - mean) ** 2, 0);
  return { method, group, n, mean, deviation: n > 1 ? Math.sqrt(squares / (n - 1)) : undefined };
}

/** Statistics by method: over all tests (group `all`), then by primary publication. */
export function burstStatistics(predictions: readonly BurstPrediction[] = burstPredictions()): BurstStatistics[] {
  return burstMethods.flatMap((method) => {
    const own = predictions.filter((prediction) => prediction.method === method);
    const groups = [...new Set(own.map(({ test }) => test.group))];
    const ratiosOf = (group: string): number[] =>
      own.filter(({ test }) => group === 'all' || test.group === group).map(({ ratio }) => ratio);
    return ['all', ...groups].map((group) => statisticsOf(method, group, ratiosOf(group)));
  });
}

import { refuse } from '../formula/index.js';
import type { Line } from '../quantity/index.js';
import { compareRanks, type Rank, rankOf } from './rank.js';
import { checkScreening, screened } from './screen-row.js';
import type { RowStatus, ScreeningOptions, SurveyRow } from './survey-row.js';
import { lessConservative } from './unusual.js';

/** The columns of a survey: for each input the quantities of all rows in SI, or one quantity that all rows have. */
export type SurveyColumns = { readonly [K in keyof SurveyRow]: Float64Array | SurveyRow[K] };

/** A survey as screened: one entry a row. Where a row has no number its entry is NaN, and its status says why. */
export interface ScreenedSurvey {
  /** What each row came to. */
  readonly status: readonly RowStatus[];
  /** Predicted today, without a safety factor [Pa]. */
  readonly failurePressure: Float64Array;
  /** Failure pressure today over the safety factor [Pa]. */
  readonly safePressure: Float64Array;
  /** Grown over the life [m]. */
  readonly depthAtEndOfLife: Float64Array;
  /** Grown over the life [m]. */
  readonly lengthAtEndOfLife: Float64Array;
  /** Over the safety factor, with the loss as grown [Pa]. */
  readonly safePressureAtEndOfLife: Float64Array;
  /** Until the safe pressure falls below the design pressure or the loss is too deep, the life at most [s]. */
  readonly timeLeft: Float64Array;
  /** Why a row is refused or too deep, by its number from 0. */
  readonly because: ReadonlyMap<number, string>;
  /** The values of a row outside their usual spans, as sentences, by its number from 0. */
  readonly unusual: ReadonlyMap<number, readonly Line[]>;
  /** What makes every row look better than the choices made unasked, as sentences. */
  readonly lessConservative: readonly string[];
  /** The numbers of the rows, the worst first. */
  readonly ranking: Uint32Array;
}

const NAMES = [
  'outsideDiameter',
  'wallThickness',
  'yieldStrength',
  'designPressure',
  'defectDepth',
  'defectLength',
  'depthRate',
  'lengthRate',
] as const satisfies readonly (keyof SurveyRow)[];

/**
 * Screens every row of a survey: `screenRow`, bit for bit, over columns. No row is dropped, and none ends the run.
 *
 * @param columns a list for each field, or one quantity that all rows have
 * @param options safety factor, life and method
 * @throws CalculationError `invalid-input` for columns that do not fit together, and for options
 */
export function screenSurvey(columns: SurveyColumns, options: ScreeningOptions): ScreenedSurvey {
  checkScreening(options);
  const rows = rowsOf(columns);
  const column = () => new Float64Array(rows).fill(Number.NaN);
  const [failurePressure, safePressure, depthAtEndOfLife] = [column(), column(), column()];
  const [lengthAtEndOfLife, safePressureAtEndOfLife, timeLeft] = [column(), column(), column()];
  const status: RowStatus[] = [];
  const because = new Map<number, string>();
  const unusual = new Map<number, readonly Line[]>();
  const ranks: Rank[] = [];
  for (let index = 0; index < rows; index++) {
    const row = rowAt(columns, index);
    const found = screened(row, options);
    status.push(found.status);
    ranks.push(rankOf(found, row.designPressure));
    if (found.because !== undefined) because.set(index, found.because);
    if (found.unusual !== undefined) unusual.set(index, found.unusual);
    failurePressure[index] = found.failurePressure ?? Number.NaN;
    safePressure[index] = found.safePressure ?? Number.NaN;
    depthAtEndOfLife[index] = found.depthAtEndOfLife ?? Number.NaN;
    lengthAtEndOfLife[index] = found.lengthAtEndOfLife ?? Number.NaN;
    safePressureAtEndOfLife[index] = found.safePressureAtEndOfLife ?? Number.NaN;
    timeLeft[index] = found.timeLeft ?? Number.NaN;
  }
  const ranking = Uint32Array.from(ranks, (_, index) => index).sort(
    (one, other) => compareRanks(ranks[one] as Rank, ranks[other] as Rank) || one - other,
  );
  const pressures = { failurePressure, safePressure, safePressureAtEndOfLife };
  const said = { because, unusual, lessConservative: lessConservative(options) };
  return { status, ...pressures, depthAtEndOfLife, lengthAtEndOfLife, timeLeft, ...said, ranking };
}

function rowsOf(columns: SurveyColumns): number {
  let rows: number | undefined;
  for (const name of Object.keys(columns)) {
    if (!NAMES.some((known) => known === name))
      wrong(name, 'given', `is no column of a survey, which has ${NAMES.join(', ')}`);
  }
  for (const name of NAMES) {
    const column = columns[name];
    if (typeof column === 'number') continue;
    if (!(column instanceof Float64Array)) wrong(name, typeof column, 'must be a Float64Array in SI, or one quantity');
    rows ??= column.length;
    if (column.length !== rows) wrong(name, column.length, `must have as many rows as the column before it, ${rows}`);
  }
  return rows ?? wrong('columns', 'no list', 'must hold at least one column with a quantity for each row');
}

function rowAt(columns: SurveyColumns, index: number): SurveyRow {
  const at = <K extends keyof SurveyRow>(name: K): SurveyRow[K] => {
    const column = columns[name];
    return (typeof column === 'number' ? column : (column as Float64Array)[index]) as SurveyRow[K];
  };
  return {
    outsideDiameter: at('outsideDiameter'),
    wallThickness: at('wallThickness'),
    yieldStrength: at('yieldStrength'),
    designPressure: at('designPressure'),
    defectDepth: at('defectDepth'),
    defectLength: at('defectLength'),
    depthRate: at('depthRate'),
    lengthRate: at('lengthRate'),
  };
}

function wrong(parameter: string, value: unknown, constraint: string): never {
  refuse({ code: 'invalid-input', parameter, value, unit: '', constraint });
}

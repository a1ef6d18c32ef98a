import { refuse, type SourceReference } from '../../formula/index.js';
import { type Length, length } from '../../quantity/index.js';
import { readNps } from './nominal-size.js';
import {
  type PipeDiameterRow,
  type PipeStandard,
  plainPipeDiameters,
  stainlessPipeDiameters,
} from './pipe-diameters.data.js';
import { pipeWalls } from './pipe-walls.data.js';

/** A size by its nominal pipe size (`6`, `"1-1/2"`) or by its nominal diameter in mm (`150`), one of the two. */
export type PipeSizeInput = (
  | {
      /** Nominal pipe size in inches. */
      readonly nps: string | number;
    }
  | {
      /** Nominal diameter in millimetres, as a plain number. */
      readonly dn: number;
    }
) & {
  /** `"40"`, `"STD"`, `"XXS"`, `"10S"`, with or without "Sch". */
  readonly schedule: string | number;
  /** Follows from the schedule: those that end in S on a number are B36.19M. */
  readonly standard?: PipeStandard | undefined;
  /** Which printed measures to return; they differ by rounding. Millimetres when left out. */
  readonly measures?: 'mm' | 'inch' | undefined;
};

/** A standard pipe by its size and schedule. */
export interface PipeSize {
  /** Standard of the size. */
  readonly standard: PipeStandard;
  /** Nominal size in inches. */
  readonly nps: string;
  /** Nominal diameter in millimetres. */
  readonly dn: number;
  /** Schedule by its name. */
  readonly schedule: string;
  /** Outside diameter [m]. */
  readonly outsideDiameter: Length;
  /** Nominal wall: the mill may deliver less by its under-tolerance. */
  readonly wallThickness: Length;
  /** Outside diameter less twice the nominal wall. */
  readonly insideDiameter: Length;
  /** How the table was reached. */
  readonly tag: 'secondary';
  /** Where the row stands. */
  readonly source: SourceReference;
}

/**
 * Outside diameter and nominal wall of a standard pipe.
 *
 * @param input a nominal size with its schedule
 * @returns the size as the table prints it; a wall in inches is the printed wall in mm rounded to 0.001 in, which is the
 *   printed one for every row that could be compared
 * @throws CalculationError `invalid-input` when the size, the schedule or the pair is not in the table, with what is
 * @see ASME B36.10M and B36.19M, read in the open tables that docs/tables.md names
 */
export function pipeSize(input: PipeSizeInput): PipeSize {
  const schedule = readSchedule(input.schedule);
  const standard = input.standard ?? (/^\d+S$/.test(schedule) ? 'ASME B36.19M' : 'ASME B36.10M');
  const rows = rowsOf(standard);
  const row = 'dn' in input ? rowOfDn(rows, input.dn) : rowOfNps(rows, input.nps);
  const [nps, dn, outsideMm, outsideInch] = row;
  const walls = wallsOf(standard, nps);
  const wallMm = Object.hasOwn(walls, schedule) ? walls[schedule] : undefined;
  if (wallMm === undefined) refuseSchedule(input.schedule, nps, standard, walls);
  const inInches = input.measures === 'inch';
  const outsideDiameter = inInches ? length.inch(outsideInch) : length.mm(outsideMm);
  const wallThickness = inInches ? length.inch(Math.round((wallMm * 1000) / 25.4) / 1000) : length.mm(wallMm);
  return {
    standard,
    nps,
    dn,
    schedule,
    outsideDiameter,
    wallThickness,
    insideDiameter: (outsideDiameter - 2 * wallThickness) as Length,
    tag: 'secondary',
    source: sourceOf(standard),
  };
}

/**
 * The schedules of a size by rising wall, as both standards list them.
 *
 * @param size by its nominal pipe size or by its nominal diameter in mm
 */
export function schedulesOf(size: { readonly nps: string | number } | { readonly dn: number }): readonly string[] {
  const [nps] = 'dn' in size ? rowOfDn(plainPipeDiameters, size.dn) : rowOfNps(plainPipeDiameters, size.nps);
  return byWall({ ...wallsOf('ASME B36.10M', nps), ...wallsOf('ASME B36.19M', nps) });
}

/** The sizes of a standard. */
export function rowsOf(standard: PipeStandard): readonly PipeDiameterRow[] {
  if (!Object.hasOwn(pipeWalls, standard))
    refuseWord('standard', standard, `must be ${Object.keys(pipeWalls).join(' or ')}`);
  return standard === 'ASME B36.10M' ? plainPipeDiameters : stainlessPipeDiameters;
}

/** The walls of a size in mm, by schedule. */
function wallsOf(standard: PipeStandard, nps: string): Readonly<Record<string, number>> {
  return pipeWalls[standard][nps] ?? {};
}

/** Where the sizes of a standard come from. */
export function sourceOf(standard: PipeStandard): SourceReference {
  return { key: standard === 'ASME B36.10M' ? 'asme-b36-10' : 'asme-b36-19', locator: 'table of sizes' };
}

function byWall(walls: Readonly<Record<string, number>>): string[] {
  return Object.entries(walls)
    .sort(([, a], [, b]) => a - b)
    .map(([schedule]) => schedule);
}

function readSchedule(schedule: string | number): string {
  return String(schedule)
    .trim()
    .toUpperCase()
    .replace(/^SCH(EDULE)?\.?\s*/, '');
}

function rowOfNps(rows: readonly PipeDiameterRow[], nps: string | number): PipeDiameterRow {
  const wanted = readNps(nps);
  return (
    rows.find(([name]) => readNps(name) === wanted) ??
    refuseWord('nps', nps, `must be one of NPS ${nearest(rows, wanted, ([name]) => readNps(name), 0).join(', ')}`)
  );
}

function rowOfDn(rows: readonly PipeDiameterRow[], dn: number): PipeDiameterRow {
  return (
    rows.find((row) => row[1] === dn) ??
    refuseWord('dn', dn, `must be one of DN ${nearest(rows, dn, (row) => row[1], 1).join(', ')}`)
  );
}

/** The four sizes nearest to a number by ratio, in order of size; all of them when it is no number. */
function nearest(
  rows: readonly PipeDiameterRow[],
  wanted: number,
  size: (row: PipeDiameterRow) => number,
  column: 0 | 1,
): (string | number)[] {
  const gap = (row: PipeDiameterRow) => Math.abs(Math.log(size(row) / wanted));
  const near = wanted > 0 ? [...rows].sort((a, b) => gap(a) - gap(b)).slice(0, 4) : [...rows];
  return near.sort((a, b) => size(a) - size(b)).map((row) => row[column]);
}

function refuseWord(parameter: string, value: unknown, constraint: string): never {
  refuse({ code: 'invalid-input', parameter, value, unit: '', constraint });
}

function refuseSchedule(
  schedule: string | number,
  nps: string,
  standard: PipeStandard,
  walls: Readonly<Record<string, number>>,
): never {
  const listed = byWall(walls)
    .map((name) => `${name} (${walls[name]} mm)`)
    .join(', ');
  refuseWord('schedule', schedule, `NPS ${nps} of ${standard} has ${listed}`);
}

import { alternativesOf } from './alternatives.js';
import { criteriaFor, type NoLaminate, ROUND_THE_PIPE } from './criteria.js';
import { extentOf } from './extent.js';
import { type Joints, jointsOf } from './joints.js';
import type { Unbonded } from './leak.js';
import type { Readings } from './open-readings.js';
import type { Found } from './pipe-as-found.js';
import type { Job } from './read-job.js';
import type { Strength } from './remaining-strength.js';
import { ruleOf } from './rules.js';
import type { Criterion, Row } from './thickness.js';

export interface LaminateFigures {
  readonly method: string;
  readonly hoopStrain: number;
  readonly axialStrain: number;
  readonly wrappedDiameter: number;
  readonly thickness: { readonly candidates: readonly Row[]; readonly governing: string; readonly value: number };
  readonly alternatives: readonly Row[];
  readonly plies: number;
  readonly leastPlies: number;
  readonly joints?: Joints;
  readonly laidThickness: number;
  readonly footprint?: {
    readonly under: string;
    readonly bonded: string;
    readonly diameter: number;
    readonly length: number;
  };
  readonly fittingFactor?: number;
  readonly resistance: { readonly candidates: readonly Row[]; readonly governing: string; readonly value: number };
}

const MOST_PLIES = 1000;

/** Joints of a number of plies, where the wrap is longer than the sheet is wide. */
function jointsAt(job: Job, found: Found, where: Unbonded | undefined, plies: number): Joints | undefined {
  if (job.wrap.form !== 'sheet') return undefined;
  const extent = extentOf(job, found, where, plies * job.laminate.plyThickness);
  if (extent === undefined || extent.totalLength <= job.wrap.width) return undefined;
  const adhesive = extent.overlap.candidates.find(({ criterion }) => criterion === 'adhesive')?.value ?? 0;
  return jointsOf(plies, job.wrap.width, adhesive / plies);
}

const upTo = (value: number): number => Math.ceil(value - 1e-9);

/** What the laid laminate resists on the day of the test: today's pipe, at the temperature of the steel. */
export function resistanceToday(
  job: Job,
  today: Found,
  strength: Strength | undefined,
  where: Unbonded | undefined,
  laid: LaminateFigures,
  readings: Readings,
): number {
  const criteria = criteriaFor(job, today, strength, where, readings, job.site.pipeTemperature);
  if ('none' in criteria) return Number.NaN;
  const ply = job.laminate.plyThickness;
  const carrying = (laid.joints?.carryingPlies ?? laid.plies) * ply;
  const values = criteria.rows.map(({ criterion, resists }) =>
    resists(ROUND_THE_PIPE.has(criterion) ? laid.laidThickness : carrying),
  );
  return Math.min(...values.filter((value) => Number.isFinite(value)));
}

export function laminateOf(
  job: Job,
  found: Found,
  strength: Strength | undefined,
  where: Unbonded | undefined,
  readings: Readings,
): LaminateFigures | NoLaminate {
  const leaking = found.throughWall;
  const method = job.repair.method ?? 'substrate ignored';
  const criteria = criteriaFor(job, found, strength, where, readings);
  if ('none' in criteria) return criteria;
  const { rows, load, metal, strains, factor } = criteria;
  const governing = rows.reduce((a, b) => (b.thickness > a.thickness ? b : a));
  // Nobody winds a wrap without end.
  if (!(governing.thickness < Number.POSITIVE_INFINITY)) return { none: 'not repairable', because: 'no thickness' };
  const leastPlies = Math.max(ruleOf(job, 'leastPlies'), job.laminate.qualifiedPlies ?? 0);
  const ply = job.laminate.plyThickness;
  const needs = (list: readonly Criterion[]): number => upTo(Math.max(0, ...list.map((each) => each.thickness)) / ply);
  const round = needs(rows.filter(({ criterion }) => ROUND_THE_PIPE.has(criterion)));
  const through = needs(rows.filter(({ criterion }) => !ROUND_THE_PIPE.has(criterion)));
  let plies = Math.max(leastPlies, round, through);
  if (plies > MOST_PLIES && jointsAt(job, found, where, plies) !== undefined) {
    return { none: 'not repairable', because: 'too many plies' };
  }
  let joints: Joints | undefined;
  // Plies are added until those that go through at the worst joint meet the lines along the pipe and the leak.
  while (plies <= MOST_PLIES) {
    joints = jointsAt(job, found, where, plies);
    if (joints === undefined || joints.carryingPlies >= Math.max(1, through)) break;
    plies += 1;
  }
  if (joints !== undefined && joints.carryingPlies < Math.max(1, through)) {
    return { none: 'not repairable', because: 'too narrow a sheet for its joints' };
  }
  const laid = plies * ply;
  const carrying = (joints?.carryingPlies ?? plies) * ply;
  const halted =
    load.beside.shear > 0 &&
    rows.some(
      ({ criterion, resists }) => ROUND_THE_PIPE.has(criterion) && !criterion.includes('soil') && resists(carrying) < 1,
    );
  if (readings.shearAtJoints === 'library' && halted) {
    return { none: 'not repairable', because: 'shear at the joints', laidThickness: laid };
  }
  const resistances = rows
    .map(({ criterion, resists }) => ({ criterion, value: resists(ROUND_THE_PIPE.has(criterion) ? laid : carrying) }))
    .filter(({ value }) => Number.isFinite(value));
  const least = resistances.reduce((a, b) => (b.value < a.value ? b : a), {
    criterion: 'none',
    value: Number.POSITIVE_INFINITY,
  });

  const alternatives = job.fitting === undefined ? alternativesOf(job, load, metal, leaking, readings) : [];
  return {
    method,
    hoopStrain: strains.hoop,
    axialStrain: strains.axial,
    wrappedDiameter: load.wrapped,
    thickness: {
      candidates: rows.map(({ criterion, thickness }) => ({ criterion, value: thickness })),
      governing: governing.criterion,
      value: governing.thickness,
    },
    alternatives,
    plies,
    leastPlies,
    ...(joints === undefined ? {} : { joints }),
    laidThickness: laid,
    ...(where === undefined
      ? {}
      : {
          footprint: {
            under: where.under,
            bonded: where.ring ? 'nowhere round the pipe' : 'beside it',
            diameter: where.diameter,
            length: where.length,
          },
        }),
    resistance: { candidates: resistances, governing: least.criterion, value: least.value },
    ...(job.fitting === undefined ? {} : { fittingFactor: factor }),
  };
}

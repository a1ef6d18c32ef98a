import { allowableStrains, askerOf, cyclesOf, type Strains, temperatureLimit } from './allowable-strain.js';
import type { Bond } from './bond.js';
import { energyFromTests, testsSuffice } from './energy-from-tests.js';
import { extentOf } from './extent.js';
import { wrappedDiameterOf } from './filler.js';
import { fittingFactor, onFitting } from './fitting.js';
import { type Joints, jointsOf } from './joints.js';
import { leakResistance, leakThickness, type Unbonded } from './leak.js';
import { besidePressure } from './loads-of-case.js';
import type { Readings } from './open-readings.js';
import type { Found } from './pipe-as-found.js';
import type { Job } from './read-job.js';
import type { Strength } from './remaining-strength.js';
import { worstOverMean } from './rim.js';
import { LEAST_PLIES, leakFactor, performanceFactor, temperatureFactor } from './rules.js';
import { moduliOnPipe, plyOnPipe } from './tape-moduli.js';
import {
  type Criterion,
  fromOutside,
  ignored,
  ignoredWithRelief,
  type Loads,
  longTerm,
  type Metal,
  type Row,
  sharing,
  yielded,
  yieldedWithCredit,
} from './thickness.js';

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

/** Why there is no laminate. */
export interface NoLaminate {
  readonly none: 'missing' | 'not repairable' | 'not covered';
  readonly because: string;
  /** Where it is known how thick it would be. */
  readonly laidThickness?: number;
}

const E_STEEL = 207e9;

/** Long-term strength at the design temperature: between two series by a straight line, never above the hotter. */
function longTermStrengthAt(
  { laminate, service, site }: Job,
  temperature: number = service.designTemperature,
): number | undefined {
  const { strength, testTemperature, second } = laminate.longTermStrength ?? {};
  if (strength === undefined || testTemperature === undefined) return undefined;
  const at = Math.max(temperature, site.pipeTemperature);
  const hottest = Math.max(testTemperature, second?.testTemperature ?? testTemperature);
  if (at > hottest) return undefined;
  if (second === undefined) return strength;
  const [cold, warm] =
    testTemperature < second.testTemperature
      ? [
          { at: testTemperature, value: strength },
          { at: second.testTemperature, value: second.strength },
        ]
      : [
          { at: second.testTemperature, value: second.strength },
          { at: testTemperature, value: strength },
        ];
  if (at <= cold.at) return cold.value;
  return cold.value + ((warm.value - cold.value) * (at - cold.at)) / (warm.at - cold.at);
}

function loadsOf(job: Job, found: Found, strains: Strains): Loads | undefined {
  const moduli = moduliOnPipe(job, found.outsideDiameter);
  if (moduli === undefined) return undefined;
  return {
    pressure: job.service.designPressure,
    diameter: found.outsideDiameter,
    wrapped: wrappedDiameterOf(job, found.outsideDiameter),
    beside: besidePressure(job, found.outsideDiameter),
    hoopModulus: moduli.hoop,
    axialModulus: moduli.axial,
    poisson: job.laminate.poissonRatio,
    hoopStrain: strains.hoop,
    axialStrain: strains.axial,
  };
}

function metalOf(job: Job, found: Found, strength: Strength | undefined): Metal {
  const { material } = job.pipe;
  return {
    modulus: material.modulus ?? E_STEEL,
    yieldStrength: material.yieldStrength,
    wall: found.wallAtEndOfLife,
    livePressure: job.line.pressure ?? 0,
    ...(material.allowableStress === undefined ? {} : { allowableStress: material.allowableStress }),
    // Without a code's judgement the pipe counts with what its least wall carries at the allowable stress.
    ...(strength !== undefined
      ? { safePressure: strength.safePressure }
      : material.allowableStress !== undefined
        ? { safePressure: (2 * material.allowableStress * found.wallAtEndOfLife) / found.outsideDiameter }
        : {}),
  };
}

/** Criteria of a method; undefined where the case does not give what it needs. */
function criteriaOf(
  job: Job,
  method: string,
  load: Loads,
  metal: Metal,
  leaking: boolean,
  readings: Readings,
  at?: number,
): readonly Criterion[] | undefined {
  if (method === 'substrate ignored') return ignored(load);
  if (method === 'long-term strength') {
    const strength = longTermStrengthAt(job, at);
    if (strength === undefined) return undefined;
    const factor = performanceFactor(askerOf(job), job.laminate.longTermStrength?.test ?? '') * cyclesOf(job);
    return longTerm(load, factor * strength);
  }
  if (leaking) return undefined;
  if (method === 'substrate yielded') return yielded(load, metal);
  if (metal.allowableStress === undefined || metal.safePressure === undefined) return undefined;
  return sharing(load, metal, readings);
}

/** Of the bond to prepared pipe: as stated, or by the tests of the maker. */
function energyOnPipe(laminate: Job['laminate']): number | undefined {
  const { energyReleaseRate, holeTests, shearModulus: shear, hoopModulus, axialModulus } = laminate;
  if (energyReleaseRate !== undefined || holeTests === undefined) return energyReleaseRate;
  if (shear === undefined || !testsSuffice(laminate)) return undefined;
  const poisson = laminate.poissonRatio;
  return energyFromTests({ hoopModulus, axialModulus, poisson, shear }, holeTests);
}

/** The energy release rate that counts, and whether it holds the worst place of the rim; undefined where none is given. */
export function energyOver(
  { laminate, filler }: Job,
  where: Unbonded,
): { readonly energy: number; readonly holdsRim: boolean; readonly onPipe: boolean } | undefined {
  const plain = energyOnPipe(laminate);
  if (filler?.underWholeWrap === true) {
    const energy = filler.qualifiedOverFiller?.energyReleaseRate;
    return energy === undefined ? undefined : { energy, holdsRim: where.under !== 'seal', onPipe: false };
  }
  // Found over a seal it counts for a footprint at most as large; beyond that, and for a ring, only where it is the lower one.
  const sealed = where.under === 'seal' ? laminate.energyReleaseRateOverSeal : undefined;
  const fits = sealed !== undefined && !where.ring && where.diameter <= sealed.footprint;
  const holdsRim = where.under !== 'seal' || fits;
  if (sealed !== undefined && (fits || sealed.energyReleaseRate < (plain ?? 0))) {
    // Beyond its footprint it says nothing of a rim as large.
    return { energy: sealed.energyReleaseRate, holdsRim, onPipe: true };
  }
  return plain === undefined ? undefined : { energy: plain, holdsRim, onPipe: true };
}

/** The bond over the leak. */
function bondOf(job: Job, found: Found, where: Unbonded, leaking: boolean, at?: number): Bond | undefined {
  const { laminate, service } = job;
  const limit = temperatureLimit(job, leaking);
  const over = energyOver(job, where);
  if (limit === undefined || laminate.shearModulus === undefined || over === undefined) return undefined;
  const warm = laminate.atDesignTemperature;
  const service0 = leakFactor(askerOf(job), job.repair.leakFactorByFormula === true) * cyclesOf(job);
  const common = { poisson: laminate.poissonRatio, shear: laminate.shearModulus };
  // The ply as it lies, at the moduli of the bond's own qualification.
  const { hoop: hoopModulus, axial: axialModulus } = plyOnPipe(job, found.outsideDiameter, laminate);
  // By mechanics the resistance goes with the root of modulus and energy; else the factor of the strain stands for it.
  // Held against the larger of the energies that were found, so that neither is raised by it.
  const known = warm !== undefined && over.onPipe;
  const heat = known
    ? Math.min(
        1,
        Math.sqrt(
          (warm.energyReleaseRate * Math.sqrt(warm.hoopModulus * warm.axialModulus)) /
            (Math.max(energyOnPipe(laminate) ?? 0, over.energy) *
              Math.sqrt(laminate.hoopModulus * laminate.axialModulus)),
        ),
      )
    : temperatureFactor(limit - Math.max(at ?? service.designTemperature, job.site.pipeTemperature));
  // An energy that was found over a seal as large has the worst place of its rim in it.
  const worst = over.holdsRim ? 1 : worstOverMean({ ...common, hoopModulus, axialModulus });
  return {
    ...common,
    energy: over.energy,
    energyOfPlate: over.energy / Math.max(1, worst),
    factor: service0 * heat,
    hoopModulus,
    axialModulus,
  };
}

/** Criteria of the hoop direction, in which every turn of a sheet goes through. */
const ROUND_THE_PIPE = new Set([
  'hoop strain, substrate ignored',
  'hoop stress of the pipe, load shared',
  'hoop stress of the pipe, with pressure during application',
  'hoop strain, substrate yielded',
  'hoop stress, long-term strength, substrate ignored',
  'size of the hole',
  'ring buckling under pressure from outside',
  'hoop strain with ring bending under soil',
]);

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

/** Every criterion of the method, over a pipe and a hole as found, at a temperature of the laminate. */
function criteriaFor(
  job: Job,
  found: Found,
  strength: Strength | undefined,
  where: Unbonded | undefined,
  readings: Readings,
  at?: number,
):
  | {
      readonly rows: readonly Criterion[];
      readonly load: Loads;
      readonly metal: Metal;
      readonly strains: Strains;
      readonly factor: number;
    }
  | NoLaminate {
  const factor = fittingFactor(job, found.outsideDiameter);
  if (factor === undefined) return { none: 'missing', because: 'radius of the bend' };
  const leaking = found.throughWall;
  const strains = allowableStrains(job, leaking, at);
  if (strains === undefined) return { none: 'missing', because: 'temperature limit' };
  if (!(strains.hoop > 0) || !(strains.axial > 0)) return { none: 'not repairable', because: 'no strain left' };
  const load = loadsOf(job, found, strains);
  if (load === undefined) return { none: 'missing', because: 'shear modulus' };
  const metal = metalOf(job, found, strength);
  const method = job.repair.method ?? 'substrate ignored';
  const criteria = criteriaOf(job, method, load, metal, leaking, readings, at);
  if (criteria === undefined) return { none: 'missing', because: method };
  const rows: Criterion[] = [...criteria, ...fromOutside(load)];
  if (leaking) {
    // The metal carries nothing: the lines of the substrate ignored hold beside any method (2.5, last line).
    for (const row of ignored(load)) if (!rows.some(({ criterion }) => criterion === row.criterion)) rows.push(row);
    if (where === undefined) return { none: 'missing', because: 'footprint' };
    const bond = bondOf(job, found, where, leaking, at);
    if (bond === undefined) return { none: 'missing', because: 'energy release rate' };
    const t = leakThickness(bond, where, found.outsideDiameter, load.pressure);
    if (t === undefined) return { none: 'not repairable', because: 'no thickness holds the leak' };
    rows.push({
      criterion: where.under === 'slot' ? 'leak through the slot' : 'leak through the hole',
      thickness: t,
      resists: (laid) => leakResistance(bond, where, found.outsideDiameter, laid),
    });
    // d <= sqrt(6 D t) with t the smaller of wall and laminate: plies help as long as the wall allows it.
    const { designHole = Number.POSITIVE_INFINITY } = found;
    const size = designHole ** 2 / (6 * found.outsideDiameter);
    if (size <= found.wall) rows.push({ criterion: 'size of the hole', thickness: size, resists: () => Number.NaN });
  }
  return { rows: rows.map((row) => onFitting(row, factor)), load, metal, strains, factor };
}

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
  const leastPlies = Math.max(LEAST_PLIES, job.laminate.qualifiedPlies ?? 0);
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

/** What the other methods would ask for, and two lines that no design takes. */
function alternativesOf(job: Job, load: Loads, metal: Metal, leaking: boolean, readings: Readings): Row[] {
  const alternatives: Row[] = [];
  for (const other of ['substrate ignored', 'substrate sharing load', 'substrate yielded', 'long-term strength']) {
    if (other === (job.repair.method ?? 'substrate ignored')) continue;
    const lines = criteriaOf(job, other, load, metal, leaking, readings);
    if (lines === undefined) continue;
    const all = [...lines, ...(leaking ? ignored(load) : []), ...fromOutside(load)];
    const thickest = Math.max(...all.map((each) => each.thickness));
    if (thickest < Number.POSITIVE_INFINITY) alternatives.push({ criterion: other, value: thickest });
  }
  alternatives.push({
    criterion: 'hoop line of substrate ignored, with relief by the end load',
    value: ignoredWithRelief(load),
  });
  // Credit only while the remaining wall bears that pressure without yielding.
  const bears = (2 * metal.yieldStrength * metal.wall) / load.diameter;
  if (!leaking && metal.livePressure > 0 && metal.livePressure <= bears) {
    alternatives.push({
      criterion: 'hoop line of substrate yielded, with credit for pressure during application',
      value: yieldedWithCredit(load, metal),
    });
  }
  return alternatives;
}

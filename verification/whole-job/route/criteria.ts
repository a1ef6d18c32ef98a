import { allowableStrains, askerOf, cyclesOf, type Strains } from './allowable-strain.js';
import { bondOf } from './bond-over-leak.js';
import { wrappedDiameterOf } from './filler.js';
import { fittingFactor, onFitting } from './fitting.js';
import { leakResistance, leakThickness, type Unbonded } from './leak.js';
import { besidePressure } from './loads-of-case.js';
import type { Readings } from './open-readings.js';
import type { Found } from './pipe-as-found.js';
import type { Job } from './read-job.js';
import type { Strength } from './remaining-strength.js';
import { performanceFactor, ruleOf } from './rules.js';
import { moduliOnPipe } from './tape-moduli.js';
import {
  type Criterion,
  fromOutside,
  ignored,
  type Loads,
  longTerm,
  type Metal,
  sharing,
  yielded,
} from './thickness.js';

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
export function criteriaOf(
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

/** Criteria of the hoop direction, in which every turn of a sheet goes through. */
export const ROUND_THE_PIPE = new Set([
  'hoop strain, substrate ignored',
  'hoop stress of the pipe, load shared',
  'hoop stress of the pipe, with pressure during application',
  'hoop strain, substrate yielded',
  'hoop stress, long-term strength, substrate ignored',
  'size of the hole',
  'ring buckling under pressure from outside',
  'hoop strain with ring bending under soil',
]);

/** Every criterion of the method, over a pipe and a hole as found, at a temperature of the laminate. */
export function criteriaFor(
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
    const size = designHole ** 2 / (ruleOf(job, 'hole.validity') * found.outsideDiameter);
    if (size <= found.wall) rows.push({ criterion: 'size of the hole', thickness: size, resists: () => Number.NaN });
  }
  return { rows: rows.map((row) => onFitting(row, factor)), load, metal, strains, factor };
}

import { padOf } from './leak-seal.js';
import type { Found } from './pipe-as-found.js';
import type { Job } from './read-job.js';
import { rootOfIncreasing } from './root.js';
import { LEAST_HOLE } from './rules.js';

/** Where the laminate over a leak is bonded to nothing. */
export interface Unbonded {
  readonly under: 'hole' | 'seal';
  readonly diameter: number;
  readonly length: number;
  readonly ring: boolean;
}

/** What the bond over it is made of. */
export interface Bond {
  readonly energy: number;
  /** What of it the plate over a seal may release by the mean of its rim, since the worst place of the rim releases more. */
  readonly energyOfPlate: number;
  readonly factor: number;
  readonly hoopModulus: number;
  readonly axialModulus: number;
  readonly poisson: number;
  readonly shear: number;
}

/** The circle round the hole, the pad, the sheet and the collar; bands that stay make a ring. */
export function unbonded(job: Job, found: Found): Unbonded | undefined {
  if (!found.throughWall || found.designHole === undefined) return undefined;
  const { seal } = job;
  const hole = Math.max(LEAST_HOLE, found.designHole);
  if (seal === undefined || found.holeToday === undefined) {
    return { under: 'hole', diameter: hole, length: hole, ring: false };
  }
  const { across } = seal.sheet;
  if (across === undefined || seal.collar === undefined || seal.bands === undefined) return undefined;
  const collar = seal.collar === 'none' ? 0 : seal.collar;
  const diameter = Math.max(hole, padOf(seal, found.holeToday).diameter, across, collar);
  const half = (Math.PI * found.outsideDiameter) / 2;
  const left = seal.bands === 'left';
  const banded = seal.band.count * seal.band.width;
  return {
    under: 'seal',
    diameter,
    length: left ? Math.max(diameter, banded) : diameter,
    ring: left || across > half || collar > half,
  };
}

/** K of the round hole (2.8 a): bending, half space, shear; the half space where it is stiffest and soft through its thickness. */
function kOfHole(bond: Bond, d: number, t: number): number {
  const free = 1 - (bond.poisson ** 2 * bond.axialModulus) / bond.hoopModulus;
  const plate = free / Math.sqrt(bond.hoopModulus * bond.axialModulus);
  const edge = edgeFactor(Math.max(bond.hoopModulus, bond.axialModulus) / free, bond.shear);
  return plate * ((3 * d ** 4) / (512 * t ** 3) + (edge * d) / Math.PI) + (3 * d * d) / (64 * bond.shear * t);
}

/**
 * How much more half a crack releases in a body soft through its thickness: K2 sqrt((sqrt(E1/E2) + E1/(2 G)) / (2 E1 E2)) in place
 * of K2 / E1 (Sih, Paris and Irwin 1965, from memory). No case states the modulus through the thickness: 2 G is a low one.
 */
function edgeFactor(stripModulus: number, shear: number): number {
  const softer = Math.max(1, stripModulus / (2 * shear));
  return Math.sqrt((softer * (softer + Math.sqrt(softer))) / 2);
}

/** K of a ring that bonds nowhere, its overshoot of 1.54 included. */
function kOfRing(bond: Bond, length: number, diameter: number, t: number): number {
  return (1.55 * diameter ** 2) / (8 * bond.hoopModulus * t) + (Math.PI * length) / (4 * bond.hoopModulus);
}

export function leakResistance(bond: Bond, where: Unbonded, diameter: number, t: number): number {
  const plate = bond.energyOfPlate / kOfHole(bond, where.diameter, t);
  const ring = bond.energy / kOfRing(bond, where.length, diameter, t);
  return bond.factor * Math.sqrt(where.under === 'hole' ? plate : where.ring ? ring : Math.max(plate, ring));
}

/** The thickness that resists a pressure; undefined where none does. */
export function leakThickness(bond: Bond, where: Unbonded, diameter: number, pressure: number): number | undefined {
  return rootOfIncreasing((t) => leakResistance(bond, where, diameter, t) - pressure, 1e-3);
}

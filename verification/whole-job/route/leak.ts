import type { Bond } from './bond.js';
import { padOf } from './leak-seal.js';
import type { Opening } from './opening.js';
import type { Found } from './pipe-as-found.js';
import type { Job } from './read-job.js';
import { edgeOfRim, kOfHole } from './rim.js';
import { rootOfIncreasing } from './root.js';
import { ruleOf } from './rules.js';
import { slotResistance } from './slot.js';

/** Where the laminate over a leak is bonded to nothing. */
export interface Unbonded {
  readonly under: 'hole' | 'slot' | 'seal';
  readonly diameter: number;
  readonly length: number;
  readonly ring: boolean;
  readonly opening?: Opening;
}

/** The circle round the hole, the pad, the sheet and the collar; bands that stay make a ring. */
export function unbonded(job: Job, found: Found): Unbonded | undefined {
  const { designSlot: opening } = found;
  const { seal } = job;
  if (seal === undefined && opening !== undefined) {
    const { axialLength: length, circumferentialWidth: width } = opening;
    return { under: 'slot', diameter: Math.hypot(length, width), length, ring: false, opening };
  }
  const enclosing = found.designHole ?? (opening && Math.hypot(opening.axialLength, opening.circumferentialWidth));
  if (!found.throughWall || enclosing === undefined) return undefined;
  const hole = Math.max(ruleOf(job, 'hole.leastDiameter'), enclosing);
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

/** K of a ring that bonds nowhere, its overshoot of 1.54 included. */
function kOfRing(bond: Bond, length: number, diameter: number, t: number): number {
  return (1.55 * diameter ** 2) / (8 * bond.hoopModulus * t) + (Math.PI * length) / (4 * bond.hoopModulus);
}

export function leakResistance(bond: Bond, where: Unbonded, diameter: number, t: number): number {
  const { opening } = where;
  if (opening !== undefined) return slotResistance({ bond, opening, diameter }, t);
  const plate = bond.energyOfPlate / kOfHole(bond, where.diameter, t, edgeOfRim(bond));
  const ring = bond.energy / kOfRing(bond, where.length, diameter, t);
  return bond.factor * Math.sqrt(where.under === 'hole' ? plate : where.ring ? ring : Math.max(plate, ring));
}

/** The thickness that resists a pressure; undefined where none does. */
export function leakThickness(bond: Bond, where: Unbonded, diameter: number, pressure: number): number | undefined {
  return rootOfIncreasing((t) => leakResistance(bond, where, diameter, t) - pressure, 1e-3);
}

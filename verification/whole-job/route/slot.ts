import type { Bond } from './bond.js';
import { edgeFactor } from './edge.js';
import { besidePressure } from './loads-of-case.js';
import type { Opening } from './opening.js';
import type { Found } from './pipe-as-found.js';
import type { Job } from './read-job.js';
import { assessmentFactor, foliasModified } from './remaining-strength.js';

/** Over that of a clamped root, since a root turns: by finite elements (CHANGELOG; 2.8 of the note gives 1.13 squared). */
const TURNING_ROOT = 1.4;
/** A clamped arc that lets go all round, over its membrane. */
const OVERSHOOT = 1.6;

/** A bond over an opening of a pipe. */
interface Over {
  readonly bond: Bond;
  readonly opening: Opening;
  readonly diameter: number;
}

/** A modulus along one direction as it bends a strip that may not contract across it. */
function ofStrip(bond: Bond, modulus: number): number {
  return modulus / (1 - (bond.poisson ** 2 * bond.axialModulus) / bond.hoopModulus);
}

/** Release over the square of the pressure of an endless strip over a width (2.8 b): bending, half a crack, shear. */
function ofEndlessStrip(bond: Bond, modulus: number, width: number, t: number): number {
  const E = ofStrip(bond, modulus);
  const edge = edgeFactor(E, bond.shear);
  const bending = width ** 4 / (24 * t ** 3);
  return TURNING_ROOT * ((bending + (Math.PI * edge * width) / 4) / E + (3 * width ** 2) / (16 * bond.shear * t));
}

/** Of a ring that lets go all round (2.8 b, wide), the steel under it not counted, with half a crack over the narrower way. */
function ofWholeRing({ bond, opening, diameter }: Over, t: number): number {
  const narrow = Math.min(opening.axialLength, opening.circumferentialWidth);
  const softer = ofStrip(bond, Math.min(bond.hoopModulus, bond.axialModulus));
  return (OVERSHOOT * diameter ** 2) / (8 * bond.hoopModulus * t) + (Math.PI * narrow) / (4 * softer);
}

/** A slot releases no more than an endless one along the pipe, one round it, and a whole ring: the lowest bound counts. */
export function slotResistance(over: Over, t: number): number {
  const { bond, opening } = over;
  const released = Math.min(
    ofEndlessStrip(bond, bond.axialModulus, opening.axialLength, t),
    ofEndlessStrip(bond, bond.hoopModulus, opening.circumferentialWidth, t),
    ofWholeRing(over, t),
  );
  return bond.factor * Math.sqrt(bond.energy / released);
}

/** What the metal beside a slot does not hold at the design pressure, as if all the thinned metal were cut through. */
export function metalFails(job: Job, found: Found): readonly ('tears on' | 'parts')[] {
  const factor = assessmentFactor(job);
  if (job.defect.kind !== 'through-wall slot' || found.slotAtEndOfLife === undefined || factor === undefined) return [];
  const { outsideDiameter: D, wall, lengthAtEndOfLife, widthAtEndOfLife } = found;
  const P = job.service.designPressure;
  const flow = (1.1 * job.pipe.material.yieldStrength) / factor;
  const along = (2 * flow * wall) / (D * foliasModified(lengthAtEndOfLife ** 2 / (D * wall)));
  const across = flow * shareBesideCut(widthAtEndOfLife, D) - besidePressure(job, D).force / (Math.PI * D * wall);
  return [...(along < P ? (['tears on'] as const) : []), ...((across * 4 * wall) / D < P ? (['parts'] as const) : [])];
}

/** Share of the flow stress along a pipe that is cut round a part of it, its bending about the rest included (net section). */
export function shareBesideCut(width: number, diameter: number): number {
  const half = Math.min(width / diameter, Math.PI);
  return Math.max(0, 1 - half / Math.PI - (2 / Math.PI) * Math.asin(Math.sin(half) / 2));
}

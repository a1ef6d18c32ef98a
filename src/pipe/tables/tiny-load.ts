import type { Length, Stress } from '../../quantity/index.js';

/** A pipe, and one load on its section: a force, or a moment. */
export interface LoadOnPipe {
  readonly kind: 'force' | 'moment';
  readonly value: number;
  readonly outsideDiameter?: Length | undefined;
  readonly circumference?: Length | undefined;
  readonly wallThickness: Length;
  readonly yieldStrength: Stress;
}

/** Share of the load at which the sound pipe yields below which nobody states a load; chosen: a slip of kN to N falls below it. */
const TINY = 1 / 1000;

/**
 * The span of the loads that are worth stating on this pipe, from a thousandth of the load at which its section yields up to that
 * load, on the side of the stated one; nothing where the stated load is none, or no smaller.
 */
export function tinyLoad(given: LoadOnPipe): readonly [least: number, most: number] | undefined {
  const { kind, value, outsideDiameter, circumference = Number.NaN, wallThickness: t, yieldStrength } = given;
  const D = outsideDiameter ?? circumference / Math.PI;
  const section = kind === 'force' ? Math.PI * t * (D - t) : (Math.PI * (D ** 4 - (D - 2 * t) ** 4)) / (32 * D);
  const most = section * yieldStrength;
  const least = TINY * most;
  if (value === 0 || !(Math.abs(value) < least)) return undefined;
  return value > 0 ? [least, most] : [-most, -least];
}

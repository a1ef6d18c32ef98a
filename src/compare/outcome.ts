import type { Kind } from '../quantity/index.js';
import type { RepairCase, RepairDesign } from '../repair/index.js';
import { leastOf } from '../repair/timeline/duration.js';

/** What a design comes to, as one name and one value; absent where the design did not get so far. */
export interface Outcome {
  /** What it is. */
  readonly name: OutcomeName;
  /** Kind of quantity, or a count. */
  readonly kind: Kind | 'count';
  /** In SI; nothing where the design did not get as far. */
  readonly value: number | undefined;
  /** The criterion that governs it, where several could. */
  readonly governing?: string | undefined;
}

/** The outcomes by which two designs are told apart, in the order of the job. */
export const outcomeNames = [
  'allowable hoop strain',
  'thickness',
  'plies',
  'laid thickness',
  'resistance',
  'margin',
  'overlap',
  'axial length',
  'test pressure',
  'return to service, not before',
] as const;

/** What of a design is compared, by its name. */
export type OutcomeName = (typeof outcomeNames)[number];

/**
 * The pressure that a case is designed for: a surge above the design pressure takes its place.
 *
 * @param repairCase with its design pressure, and its surge where it states one
 * @returns gauge pressure [Pa]
 */
export function pressureOf({ service: { designPressure, surge } }: RepairCase): number {
  return typeof surge === 'number' ? Math.max(surge, designPressure) : designPressure;
}

/**
 * The outcomes of a design. The margin is the resistance of what is laid over the pressure that it is designed for, less
 * one; the return to service is what the known steps of the job take, nothing counted for those that nobody states.
 *
 * @param design made or not; an outcome that it did not get to has no value
 */
export function outcomesOf(design: RepairDesign): Outcome[] {
  const { laminate, extent, acceptance, timeline, case: repairCase } = design;
  const resistance = laminate?.resistance;
  const margin = resistance === undefined ? undefined : resistance.value / pressureOf(repairCase) - 1;
  const back = timeline === undefined ? undefined : leastOf(timeline.earliestReturn);
  return [
    { name: 'allowable hoop strain', kind: 'strain', value: laminate?.hoopStrain },
    { name: 'thickness', kind: 'length', value: laminate?.thickness.value, governing: laminate?.thickness.governing },
    { name: 'plies', kind: 'count', value: laminate?.plies },
    { name: 'laid thickness', kind: 'length', value: laminate?.laidThickness },
    { name: 'resistance', kind: 'gauge pressure', value: resistance?.value, governing: resistance?.governing },
    { name: 'margin', kind: 'ratio', value: margin, governing: resistance?.governing },
    { name: 'overlap', kind: 'length', value: extent?.overlap.value, governing: extent?.overlap.governing },
    { name: 'axial length', kind: 'length', value: extent?.totalLength },
    { name: 'test pressure', kind: 'gauge pressure', value: acceptance?.pressureTest.pressure },
    { name: 'return to service, not before', kind: 'time', value: back },
  ];
}

/**
 * The outcome of that name.
 *
 * @param design made or not
 * @param name which outcome
 */
export function outcomeOf(design: RepairDesign, name: OutcomeName): Outcome {
  const found = outcomesOf(design).find((each) => each.name === name);
  if (found === undefined) throw new Error(`there is no outcome "${name}": a fault of this library`);
  return found;
}

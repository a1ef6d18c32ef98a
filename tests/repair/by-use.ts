import { type Designed, designRepair, type RepairCase, type StepId, type Timeline } from '../../src/repair/index.js';

/** The cures or mixes that a design has, each with its use, in the order in which the design names them. */
export function listed<Parts extends object>(parts: Parts): [string, Exclude<Parts[keyof Parts], 'none'>][] {
  return Object.entries(parts).filter(([, part]) => part !== 'none');
}

/** One part of a design that has to be there. */
export function present<T>(part: T | 'none' | undefined): T {
  if (part === undefined || part === 'none') throw new Error(`the design has no such part: ${part}`);
  return part;
}

/** The design of a case that has to be designed. */
export function designed(repairCase: RepairCase): Designed {
  const design = designRepair(repairCase);
  if (design.verdict !== 'designed')
    throw new Error(`not designed: ${JSON.stringify([design.reasons, design.missing])}`);
  return design;
}

/** How long a step takes, in a timeline or a plan. */
export function timeOf({ steps }: Pick<Timeline, 'steps'>, id: StepId): number {
  const duration = steps.find((step) => step.id === id)?.duration;
  if (duration?.known !== true) throw new Error(`no time for the step ${id}`);
  return duration.time;
}

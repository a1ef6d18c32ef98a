import { step } from '../../formula/index.js';
import type { Mass, MassFlow, Time } from '../../quantity/index.js';
import { batchPlan, batchSplit, usableMass } from '../../resin/index.js';
import { practice } from '../../rules/index.js';
import type { Parts } from '../case/case.js';
import type { MixDesign } from '../design/design-work.js';
import { assume, attempt, type Workbook } from '../job/workbook.js';
import { allowedTimeOf } from './allowed-time.js';

/** What is mixed, as its maker packs it and the crew places it. */
interface Mixed {
  readonly parts: Parts;
  readonly kitMass: Mass;
  readonly rate: MassFlow;
}

export type Batches = Pick<MixDesign, 'base' | 'hardener' | 'batches' | 'batchMass' | 'limitedBy' | 'kits'>;

/**
 * Batches that neither the kit nor the time that is allowed exceeds, and what goes into each. What is placed with tape or
 * sheet may go on slower than its resin: the lesser mass counts.
 */
export function planBatches(
  work: Workbook,
  material: Mixed,
  mass: Mass,
  workingTime: Time,
  laidInTime?: (allowedTime: Time) => Mass | undefined,
): Batches | undefined {
  const { recorder } = work;
  return attempt(work, 'mixing', () => {
    const allowedTime = allowedTimeOf(work, workingTime, 'one batch');
    const placed = step(recorder, 'resin/usable-mass', usableMass, {
      placingRate: material.rate,
      workingTime: allowedTime,
      mixingTime: assume(work, undefined, practice.mixingTime),
    });
    const plan = step(recorder, 'resin/batch-plan', batchPlan, {
      mass,
      usableMass: Math.min(placed, laidInTime?.(allowedTime) ?? placed) as Mass,
      kitMass: material.kitMass,
      wholeKits: false,
    });
    const split = step(recorder, 'resin/batch-split', batchSplit, {
      batchMass: plan.batchMass,
      partsA: material.parts.base,
      partsB: material.parts.hardener,
    });
    return {
      batches: plan.batches,
      batchMass: plan.batchMass,
      base: split.massA,
      hardener: split.massB,
      limitedBy: plan.governing,
      kits: plan.kits,
    };
  });
}

import { heading, step } from '../../formula/index.js';
import type { Area, Length, Time } from '../../quantity/index.js';
import { laminateResin } from '../../resin/index.js';
import { practice } from '../../rules/index.js';
import type { WetLayUp } from '../case/case.js';
import type { MixDesign } from '../design/design-work.js';
import { assume, type Workbook } from '../job/workbook.js';
import { planBatches } from './batches.js';
import { massLaidInTime } from './laid-in-time.js';

/** What the resin wets out: all of the tape or sheet. */
interface Fabric {
  readonly area: Area;
  readonly length: Length;
}

/** Resin to wet out the fabric of the laminate, in batches that can be used up. */
export function planLaminateResin(
  work: Workbook,
  resin: WetLayUp,
  { area, length }: Fabric,
  workingTime: Time,
): MixDesign | undefined {
  const { recorder } = work;
  heading(recorder, 'Laminate resin');
  const mass = step(recorder, 'resin/laminate-resin', laminateResin, {
    fabricArea: area,
    arealWeight: resin.fabricWeight,
    fibreMassFraction: resin.fibreMassFraction,
    waste: assume(work, resin.waste, practice.mixWaste),
  });
  const plan = planBatches(work, resin, mass, workingTime, (allowedTime) =>
    massLaidInTime(work, mass, length, allowedTime),
  );
  if (plan === undefined) return undefined;
  const { batches, batchMass, base, hardener, limitedBy, kits } = plan;
  const material = `${work.case.laminate.name}, resin`;
  return { material, area, mass, batches, batchMass, base, hardener, limitedBy, kits };
}

import type { Time } from '../../quantity/index.js';
import type { CureSheet, RepairCase } from '../case/case.js';
import type {
  AsFound,
  Designed,
  ExtentDesign,
  LaminateDesign,
  MixDesign,
  RepairDesign,
  SheetDesign,
  TapeDesign,
} from '../design/design.js';
import type { AcceptanceDesign, RollsDesign, SealDesign, SiteDesign } from '../design/design-work.js';
import { openWorkbook } from '../job/workbook.js';
import { planCure } from '../mix-and-cure/cure.js';

/** All that a plan is made of: a design that was made has every part but those its case has no use for. */
export interface PlanFacts {
  readonly design: Designed;
  readonly case: RepairCase;
  readonly found: AsFound;
  readonly laminate: LaminateDesign;
  readonly extent: ExtentDesign;
  readonly wrap: TapeDesign | SheetDesign;
  readonly site: SiteDesign;
  readonly rolls: RollsDesign;
  readonly acceptance: AcceptanceDesign;
  readonly seal: SealDesign | undefined;
  readonly fillerMix: MixDesign | undefined;
  readonly resinMix: MixDesign | undefined;
  /** How long a material waits that is laid at a time of the job; `undefined` where the forecast ends before. */
  readonly waitOf: (material: string, cure: CureSheet) => (startsAt: Time) => Time | undefined;
}

/**
 * The parts of a design that was made; nothing for any other.
 *
 * @param late how much later than in the case the job starts, on the hours of its forecast
 */
export function factsOf(design: RepairDesign, late: number): PlanFacts | undefined {
  if (design.verdict !== 'designed') return undefined;
  const { found, laminate, extent, wrap, site, rolls, acceptance, seal, mixes } = design;
  return {
    design,
    case: design.case,
    found: found,
    laminate,
    extent,
    wrap,
    site,
    rolls,
    acceptance,
    seal: seal === 'none' ? undefined : seal,
    fillerMix: mixes.filler === 'none' ? undefined : mixes.filler,
    resinMix: mixes.laminateResin === 'none' ? undefined : mixes.laminateResin,
    waitOf: (material, cure) => (startsAt) => waitFrom(design.case, material, cure, (startsAt + late) as Time),
  };
}

/** The same stage that planned the cure, asked again for the hour at which the material is really laid. */
function waitFrom(repairCase: RepairCase, material: string, cure: CureSheet, startsAt: Time): Time | undefined {
  const work = openWorkbook(repairCase, {});
  return planCure(work, material, cure, startsAt)?.wait;
}

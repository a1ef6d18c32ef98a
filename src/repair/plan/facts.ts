import type { Time } from '../../quantity/index.js';
import type { CureSheet, RepairCase } from '../case/case.js';
import type {
  AsFound,
  CureDesign,
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
  readonly design: RepairDesign;
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
  const { asFound, laminate, extent, wrap, site, rolls, acceptance, seal, mixes } = design;
  if (design.verdict !== 'designed') return undefined;
  if (asFound === undefined || laminate === undefined || extent === undefined || wrap === undefined) return undefined;
  if (site === undefined || rolls === undefined || acceptance === undefined) return undefined;
  return {
    design,
    case: design.case,
    found: asFound,
    laminate,
    extent,
    wrap,
    site,
    rolls,
    acceptance,
    seal,
    fillerMix: mixes.find(({ use }) => use === 'filler'),
    resinMix: mixes.find(({ use }) => use === 'laminate resin'),
    waitOf: (material, cure) => (startsAt) => waitFrom(design.case, material, cure, (startsAt + late) as Time),
  };
}

/** The same stage that planned the cure, asked again for the hour at which the material is really laid. */
function waitFrom(repairCase: RepairCase, material: string, cure: CureSheet, startsAt: Time): Time | undefined {
  const work = openWorkbook(repairCase, {});
  return planCure(work, material, cure, startsAt)?.wait;
}

/** How long a material of the design can be worked. */
export function timesOf({ design }: PlanFacts, material: string): CureDesign | undefined {
  return design.cures.find((each) => each.material === material);
}

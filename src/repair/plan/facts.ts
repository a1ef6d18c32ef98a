import type { RepairCase } from '../case/case.js';
import type { AsFound, Designed, ExtentDesign, LaminateDesign, SheetDesign, TapeDesign } from '../design/design.js';
import type {
  AcceptanceDesign,
  CureDesigns,
  LineDesign,
  MixDesign,
  RollsDesign,
  SealDesign,
  SiteDesign,
} from '../design/design-work.js';
import { type EndOfLife, endOfLife } from '../end-of-life.js';
import type { Timeline } from '../timeline/timeline.js';

/** The parts of a design that its plan puts into words; what the job has no use for is `undefined`. */
export interface PlanFacts {
  readonly case: RepairCase;
  readonly found: AsFound;
  readonly line: LineDesign;
  readonly laminate: LaminateDesign;
  readonly extent: ExtentDesign;
  readonly wrap: TapeDesign | SheetDesign;
  readonly cures: CureDesigns;
  /** With the hours that were entered, and the gate at the hour to which they move it. */
  readonly timeline: Timeline;
  readonly site: SiteDesign;
  readonly rolls: RollsDesign;
  readonly acceptance: AcceptanceDesign;
  readonly seal: SealDesign | undefined;
  readonly fillerMix: MixDesign | undefined;
  readonly resinMix: MixDesign | undefined;
  readonly endOfLife: EndOfLife;
}

/** The parts of a design that was made. */
export function factsOf(design: Designed, { timeline, site }: Pick<Designed, 'timeline' | 'site'>): PlanFacts {
  const { found, line, laminate, extent, wrap, cures, rolls, acceptance, seal, mixes } = design;
  return {
    case: design.case,
    found,
    line,
    laminate,
    extent,
    wrap,
    cures,
    timeline,
    site,
    rolls,
    acceptance,
    seal: seal === 'none' ? undefined : seal,
    fillerMix: mixes.filler === 'none' ? undefined : mixes.filler,
    resinMix: mixes.laminateResin === 'none' ? undefined : mixes.laminateResin,
    endOfLife: endOfLife(design),
  };
}

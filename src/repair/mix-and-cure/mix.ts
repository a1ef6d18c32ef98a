import { practice } from '../../rules/index.js';
import { tapeArea } from '../../wrap/index.js';
import type { AsFound, ExtentDesign, SheetDesign, TapeDesign } from '../design/design.js';
import type { CureDesigns, MixDesigns } from '../design/design-work.js';
import { type Open, open } from '../job/stage.js';
import type { Workbook } from '../job/workbook.js';
import { lengthOf } from '../wrap/charge.js';
import { laidLength } from '../wrap/wrap.js';
import { planFiller } from './filler-mix.js';
import { planLaminateResin } from './resin-mix.js';

/** From the start of kneading or stirring to one even colour. */
export const MIXING_TIME = practice.mixingTime.value;

/** What the earlier stages say about what is mixed. */
export interface MixDemand {
  readonly found: AsFound;
  readonly extent: ExtentDesign;
  readonly wrap: TapeDesign | SheetDesign;
  readonly cures: CureDesigns;
}

/** What is mixed on site: filler under the wrap, resin for it. */
export function planMixes(work: Workbook, { found, extent, wrap, cures }: MixDemand): MixDesigns | Open {
  const { filler: asked, resin, wrap: stock } = work.case;
  const filler =
    asked === 'none' || cures.filler === 'none'
      ? 'none'
      : planFiller(work, asked, {
          outsideDiameter: found.outsideDiameter,
          axialLength: asked.underWholeWrap === true ? laidLength(wrap, extent) : extent.defectLength,
          defectLength: extent.defectLength,
          workingTime: cures.filler.workingTime,
        });
  const fabricArea =
    wrap.form === 'tape' ? tapeArea({ tapeWidth: stock.width, tapeLength: wrap.tapeLength }) : wrap.sheetArea;
  const laminateResin =
    resin === 'none'
      ? 'none'
      : planLaminateResin(work, resin, { area: fabricArea, length: lengthOf(wrap) }, cures.laminate.workingTime);
  if (filler === undefined || laminateResin === undefined) return open;
  return { filler, laminateResin };
}

import { heading } from '../../formula/index.js';
import type { CureSheet } from '../case/case.js';
import type { CureDesign, CureDesigns, SealDesign } from '../design/design-work.js';
import { type Open, open } from '../job/stage.js';
import type { Workbook } from '../job/workbook.js';
import type { CureUse } from '../timeline/duration.js';
import { moistureCure } from './moisture-cure.js';
import { reactionCure } from './reaction-cure.js';

/**
 * How long all that cures on the pipe can be worked, and by which law it waits. Every material is looked at, so that the
 * reader learns of all that is missing.
 */
export function planCures(work: Workbook, { seal }: { seal: SealDesign | 'none' }): CureDesigns | Open {
  const { seal: asked, filler, laminate } = work.case;
  const puttyCure =
    seal === 'none' || asked === undefined ? 'none' : planCure(work, 'putty', asked.putty.name, asked.putty.cure);
  const fillerCure = filler === 'none' ? 'none' : planCure(work, 'filler', filler.name, filler.cure);
  const laminateCure = planCure(work, 'laminate', laminate.name, laminate.cure);
  if (puttyCure === undefined || fillerCure === undefined || laminateCure === undefined) return open;
  return { putty: puttyCure, filler: fillerCure, laminate: laminateCure };
}

function planCure(work: Workbook, use: CureUse, material: string, cure: CureSheet): CureDesign | undefined {
  heading(work.recorder, `Times of ${material}`);
  return cure.mechanism === 'moisture' ? moistureCure(work, material, cure) : reactionCure(work, use, material, cure);
}

import { laidThickness } from '../../laminate/index.js';
import type { Length } from '../../quantity/index.js';
import type { Designed, ExtentDesign, Reason } from '../design/design.js';
import { openWorkbook } from '../job/open-workbook.js';
import { open } from '../job/stage.js';
import { extentOf } from '../laminate/extent.js';
import { checkThin } from '../laminate/validity.js';
import { isFarBeyond } from './far-beyond.js';
import type { AsBuiltRecord } from './record.js';

/**
 * Overlap, taper and length that the laminate needs as it was laid, by the equations of the design: each layer more than
 * planned pulls on the bond. So many that they are a slip of the count ask for nothing; thickness that is more than that of the layers is resin, which pulls no harder.
 */
export function extentAsLaid(design: Designed, record: AsBuiltRecord): ExtentDesign {
  const layers = layersThatCount(design, record);
  if (layers <= plannedLayers(design)) return design.extent;
  const thickness = Math.max(thicknessOf(design, layers), design.extent.meanThickness) as Length;
  const extent = extentOf(workOf(design), design.found, thickness, design.laminate.footprint);
  if (extent === open) throw new Error('a design that was made has no extent: a fault of this library');
  return extent;
}

/** Why the laminate as it was laid lies beyond the equations of a thin one, as no design may. */
export function tooThick(design: Designed, { thickness = 0 as Length }: AsBuiltRecord): Reason | undefined {
  const work = workOf(design);
  checkThin(work, design.found.outsideDiameter, thickness);
  return work.reasons[0];
}

/** What the plan lays: the passes of a tape may give a layer more than the criteria ask for. */
export function plannedLayers({ laminate, wrap }: Designed): number {
  return Math.max(laminate.plies, wrap.layers);
}

/** Thickness of what the plan lays. */
export function plannedThickness(design: Designed): Length {
  return thicknessOf(design, plannedLayers(design));
}

/** Layers that ask for more length and resin than planned: fewer are a fault by themselves, far more a slip of the count. */
export function layersThatCount(design: Designed, { layers }: AsBuiltRecord): number {
  const planned = plannedLayers(design);
  return layers === undefined || isFarBeyond(layers, design.laminate.plies) ? planned : Math.max(layers, planned);
}

const workOf = (design: Designed) => openWorkbook(design.case, { rules: design.options.rules });

/** Layers at the ply of the system: a thinner one holds no less fibre, a thicker one no more. */
function thicknessOf({ case: { laminate } }: Designed, layers: number): Length {
  return laidThickness({ plies: layers, plyThickness: laminate.plyThickness });
}

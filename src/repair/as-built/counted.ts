import { countedThickness } from '../../laminate/index.js';
import { missingTo } from '../../numeric/index.js';
import type { Length } from '../../quantity/index.js';
import type { Designed } from '../design/design.js';
import type { AsBuiltRecord } from './record.js';

/** What was measured, without the resin-rich layer on it, which holds no fibre. */
export function fibreThickness({ thickness, inspection }: AsBuiltRecord): Length | undefined {
  if (thickness === undefined) return undefined;
  return missingTo(inspection?.resinRichThickness ?? 0, thickness) as Length;
}

/** Thickness that counts as laid: the lesser of the fibre in what was measured and of the layers that were counted. */
export function countedAsLaid(design: Designed, record: AsBuiltRecord): Length | undefined {
  const measuredThickness = fibreThickness(record);
  const { plyThickness: systemPly } = design.case.laminate;
  const { layers: plies, plyThickness = systemPly } = record;
  if (plies === undefined || measuredThickness === undefined) return undefined;
  // All of it is resin.
  if (measuredThickness === 0) return measuredThickness;
  return countedThickness({ plies, measuredThickness, plyThickness, systemPly });
}

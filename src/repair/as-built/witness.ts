import type { Designed } from '../design/design.js';
import { notShown, reaching } from './points.js';
import type { AsBuiltPoint, AsBuiltRecord } from './record.js';

/** A batch that was mixed off ratio lies under others, where no tester reaches it: its witness tells. */
export function witnessPoint(
  { mixes, acceptance: { hardness: needed } }: Designed,
  { batches = [] }: AsBuiltRecord,
): AsBuiltPoint[] {
  const own = batches.filter(({ use }) => use === 'laminate resin');
  // That no batch was recorded, or no hardness qualified, is said at their own points.
  if (mixes.laminateResin === 'none' || own.length === 0 || needed === undefined) return [];
  const unread = own.filter(({ witnessHardness }) => witnessHardness === undefined).map(({ number }) => number);
  if (unread.length > 0)
    return [notShown('witness', `nobody measured the hardness of the witness of: ${unread.join(', ')}`)];
  let softest = Number.POSITIVE_INFINITY;
  for (const { witnessHardness = softest } of own) softest = Math.min(softest, witnessHardness);
  return [reaching('witness', { name: 'hardness of the witness', kind: 'number', value: softest }, needed.leastMean)];
}

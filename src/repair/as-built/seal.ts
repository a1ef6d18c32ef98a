import type { Designed } from '../design/design.js';
import { notShown } from './points.js';
import type { AsBuiltPoint, AsBuiltPointName, AsBuiltRecord } from './record.js';

/**
 * What a laminate over a leak rests on: a seal that held dry, putty that was firm, bands that are off where they had to be.
 * Where the design has no seal nobody is asked; what was seen wrong all the same speaks against the repair, and a seal that
 * was made for a leak that nobody designed leaves it open.
 */
export function sealPoints({ seal, case: repairCase }: Designed, record: AsBuiltRecord): AsBuiltPoint[] {
  const seen = record.seal ?? {};
  const points = [
    seenTrue('seal', seen.heldDry, {
      open: 'nobody recorded that the seal held the steel dry until the laminate was cured',
      good: 'the seal held dry until the laminate was cured',
      bad: 'the seal wept: what lies on wet steel does not bond',
    }),
    seenTrue('putty firm', seen.puttyWasFirm, {
      open: 'nobody recorded that the putty took no print',
      good: 'the putty took no print',
      bad: 'the putty still took a print when work went on over it',
    }),
  ];
  if (repairCase.seal?.bands !== 'left')
    points.push(
      seenTrue('bands', seen.bandsWereRemoved, {
        open: 'nobody recorded that the bands were taken off before the wrap',
        good: 'the bands were taken off before the wrap',
        bad: 'the bands lie under the wrap: the laminate was designed to bond where they are',
      }),
    );
  if (seal !== 'none') return points;
  const bad = points.filter(({ verdict }) => verdict === 'does not meet');
  const isMade = (seen.heldDry ?? seen.puttyWasFirm) !== undefined;
  // One that wept is among the bad.
  return isMade && seen.heldDry !== false ? [notShown('seal', UNDESIGNED), ...bad] : bad;
}

const UNDESIGNED =
  'a seal was made, and the design has none: if anything leaked, run the design again with the leak; if nothing did, leave the seal out of the record';

interface Words {
  readonly open: string;
  readonly good: string;
  readonly bad: string;
}

/** What somebody has to have seen; no word about it shows nothing. */
export function seenTrue(point: AsBuiltPointName, seen: boolean | undefined, { open, good, bad }: Words): AsBuiltPoint {
  if (seen === undefined) return notShown(point, open);
  return seen ? { point, verdict: 'meets', text: good } : { point, verdict: 'does not meet', text: bad };
}

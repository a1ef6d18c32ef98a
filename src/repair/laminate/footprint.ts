import { decide, heading, step } from '../../formula/index.js';
import { unbondedDiameter } from '../../laminate/index.js';
import { halfCircumference } from '../../pipe/index.js';
import { exactly, type Length, line } from '../../quantity/index.js';
import { practice } from '../../rules/index.js';
import { bandedLength } from '../../seal/index.js';
import type { Seal } from '../case/case.js';
import type { AsFound, Footprint } from '../design/design.js';
import type { SealDesign } from '../design/design-work.js';
import { circleRound } from '../found/opening.js';
import { pressureAtWork } from '../found/pressure-at-work.js';
import { need, type Workbook, warnCrew } from '../job/workbook.js';

/**
 * What the laminate over a leak is bonded to nothing on: the hole, the slot, or the seal that lies on it, round a slot as
 * round a circle. The cavity under it is at the
 * design pressure, and the seal earns no credit.
 */
export function footprintUnder(work: Workbook, found: AsFound, seal: SealDesign | 'none'): Footprint | undefined {
  const { designHole, designSlot } = found;
  const opening = designSlot === undefined ? designHole : circleRound(work, designSlot, 'slot to design for');
  if (opening === undefined) return undefined;
  const asked = work.case.seal;
  if (seal !== 'none' && asked !== undefined) return footprintOfSeal(work, found, opening, seal, asked);
  if (designSlot === undefined) return { under: 'hole', diameter: opening, length: opening, bonded: 'beside it' };
  return { under: 'slot', diameter: opening, length: designSlot.axialLength, bonded: 'beside it' };
}

function footprintOfSeal(
  work: Workbook,
  { outsideDiameter }: AsFound,
  holeDiameter: Length,
  seal: SealDesign,
  asked: Seal,
): Footprint | undefined {
  const { recorder } = work;
  const { padDiameter } = seal;
  const sheetSize = asked.sheet.across ?? needExtent(work, 'seal.sheet.across', 'sheet');
  const collar = asked.collar ?? needExtent(work, 'seal.collar', 'collar');
  const { bands, band } = asked;
  if (bands === undefined)
    need(
      work,
      'seal.bands',
      'a band that stays keeps the laminate off the pipe all round: removed before the wrap, or left',
      'whoever seals the leak',
    );
  if (sheetSize === undefined || collar === undefined || bands === undefined) return undefined;
  heading(recorder, 'Seal under the laminate');
  const collarSize = collar === 'none' ? (0 as Length) : collar;
  const circle = { holeDiameter, padDiameter, sheetSize, collarSize };
  const diameter = step(recorder, 'laminate/unbonded-diameter', unbondedDiameter, circle);
  const half = step(recorder, 'pipe/half-circumference', halfCircumference, { outsideDiameter });
  if (bands === 'left') {
    decide(recorder, 'bonded nowhere round the pipe', 'the bands are left');
    const banded = { bands: band.count, bandWidth: band.width };
    const underBands = step(recorder, 'seal/banded-length', bandedLength, banded);
    const length = Math.max(diameter, underBands) as Length;
    return { under: 'seal', diameter, length, bonded: 'nowhere round the pipe' };
  }
  checkPuttyAlone(work, seal);
  if (Math.max(padDiameter, sheetSize, collarSize) > half) {
    decide(recorder, 'bonded nowhere round the pipe', 'what lies on the leak reaches round more than half the pipe');
    return { under: 'seal', diameter, length: diameter, bonded: 'nowhere round the pipe' };
  }
  return { under: 'seal', diameter, length: diameter, bonded: 'beside it' };
}

/** Nothing is designed that holds a pad without its band: what two hands hold back, under a static head, and the crew knows. */
function checkPuttyAlone(work: Workbook, { forceOnPad }: SealDesign): void {
  const { line: atWork } = work.case;
  if (pressureAtWork(atWork) === 0) return;
  const { mostOnPutty } = practice;
  if (atWork.state === 'static head' && forceOnPad <= mostOnPutty.value) {
    warnCrew(
      work,
      'putty',
      line(
        'From the hour that the bands come off until the wrap has cured the putty alone holds the leak, against {0}: nothing is designed for that. Better leave them, or empty the line first.',
        exactly('force on the pad', 'force', forceOnPad),
      ),
    );
    return;
  }
  work.reasons.push({
    text: 'the bands come off while the line pushes on the pad, and putty alone holds no leak under pressure: leave the bands, or empty the line',
    found: exactly('force on the pad', 'force', forceOnPad),
    limit: exactly(mostOnPutty.name, mostOnPutty.kind, mostOnPutty.value),
  });
}

function needExtent(work: Workbook, field: string, what: string): undefined {
  return need(
    work,
    field,
    `nothing bonds under the ${what}, and the laminate over the leak starts to peel at its rim: its largest extent`,
    'whoever seals the leak',
  );
}

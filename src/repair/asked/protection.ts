import { saysNothing } from '../case/says-nothing.js';
import { need, type Workbook, warnOwner } from '../job/workbook.js';

const WHO = 'the corrosion engineer of the line';

/** Buried steel is often protected by a current, and a laminate does not conduct: where it comes off, the steel is bare of both. */
export function askForProtection(work: Workbook): void {
  const { loads, pipe } = work.case;
  if (loads.soil === 'none') return;
  const { cathodicProtection: protection } = pipe;
  if (protection === undefined) {
    need(
      work,
      'pipe.cathodicProtection',
      'the line is buried, and a laminate that comes off keeps a protecting current off the steel under it: whether the line has cathodic protection and what becomes of it under the wrap, or none',
      WHO,
    );
    return;
  }
  if (protection === 'none') return;
  if (saysNothing(protection.underWrap)) {
    need(
      work,
      'pipe.cathodicProtection.underWrap',
      'the line has cathodic protection: what becomes of it under the wrap, and who judged that',
      WHO,
    );
    return;
  }
  warnOwner(
    work,
    `The line has cathodic protection, and it does not reach steel under a laminate that has come off: ${protection.underWrap}. Measure the potentials beside the repair before the ground is closed, and note where it lies in the file of the protection.`,
  );
}

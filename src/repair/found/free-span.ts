import { step } from '../../formula/index.js';
import { spanBucklingForce } from '../../pipe/index.js';
import { exactly, type Force, roundedDown } from '../../quantity/index.js';
import type { AsFound } from '../design/design.js';
import type { Workbook } from '../job/workbook.js';
import { pipeModulus } from './pipe-modulus.js';

/** A span that is pushed along itself may buckle as a column: the laminate earns no credit, the least wall counts all along. */
export function checkFreeSpan(
  work: Workbook,
  { outsideDiameter, wallAtEndOfLife: wallThickness }: Pick<AsFound, 'outsideDiameter' | 'wallAtEndOfLife'>,
): void {
  const { push: force } = work.along;
  const { freeSpan: span } = work.case.loads;
  if (span === undefined || force === 0) return;
  if (wallThickness === 0) {
    work.reasons.push({
      text: 'the case states a push along a free span whose wall is used up at the end of life, and the laminate earns no credit against buckling of the span: support it nearer',
    });
    return;
  }
  const column = { span, outsideDiameter, wallThickness, modulus: pipeModulus(work) };
  const held = step(work.recorder, 'pipe/span-buckling-force', spanBucklingForce, column);
  const push = -force as Force;
  if (held >= push) return;
  work.reasons.push({
    text: 'the free span would buckle under the push along the pipe: support it nearer, or take the push off',
    found: exactly('push along the pipe', 'force', push),
    limit: roundedDown('push that the span bears', 'force', held),
  });
}

import type { Designed } from '../../../src/repair/index.js';
import { asmePcc2, iso24817 } from '../../../src/rules/index.js';
import { reaches } from './stated.js';

/**
 * The overlap passes into the pipe three times what all that lies there pulls at the strain of class 1 over two years, and
 * they run out over five times their thickness.
 */
export function bond({ case: stated, wrap, extent }: Designed): string | undefined {
  const { axialModulus, hoopModulus, lapShearStrength = 0 } = stated.laminate;
  const rules = stated.basis === 'ISO 24817' ? iso24817 : asmePcc2;
  const [row] = (rules.defaultStrains.continuous[1].value ?? []).toSorted((a, b) => a.life - b.life);
  if (row === undefined) return 'no strain is known that the bond follows';
  const strain = axialModulus / hoopModulus > 0.5 ? row.axial : row.softAxial;
  const laid = spread(stated, wrap);
  if (!reaches(extent.taper, 5 * laid)) return 'the taper is shorter than five times what lies there';
  const pull = laid * axialModulus * strain;
  return reaches((extent.overlap.value * lapShearStrength) / 3, pull)
    ? undefined
    : 'the bond does not pass on what the laminate pulls';
}

/** Tape or sheet over the pipe, whose neighbours lap; on a bend it lies no thinner than along the outside. */
function spread({ wrap: stock, laminate: { plyThickness } }: Designed['case'], wrap: Designed['wrap']): number {
  if (wrap.form === 'tape') return (wrap.passes * plyThickness) / (stock.form === 'tape' ? 1 - stock.overlap : 1);
  return (wrap.layers * plyThickness * stock.width) / (stock.width - (wrap.bands > 1 ? 0.025 : 0));
}

import type { Designed } from '../../../src/repair/index.js';
import { asmePcc2, iso24817 } from '../../../src/rules/index.js';
import { reaches } from './stated.js';

/**
 * The overlap passes into the pipe three times what all layers that lie there pull at the strain of class 1 over two years, and
 * they run out over five times their thickness.
 */
export function bond({ case: stated, wrap, extent }: Designed): string | undefined {
  const { axialModulus, hoopModulus, lapShearStrength = 0 } = stated.laminate;
  const rules = stated.basis === 'ISO 24817' ? iso24817 : asmePcc2;
  const [row] = (rules.defaultStrains.continuous[1].value ?? []).toSorted((a, b) => a.life - b.life);
  if (row === undefined) return 'no strain is known that the bond follows';
  const strain = axialModulus / hoopModulus > 0.5 ? row.axial : row.softAxial;
  const laid = wrap.layers * stated.laminate.plyThickness;
  if (!reaches(extent.taper, 5 * laid)) return 'the taper is shorter than five times all layers that lie there';
  const pull = laid * axialModulus * strain;
  return reaches((extent.overlap.value * lapShearStrength) / 3, pull)
    ? undefined
    : 'the bond does not pass on what the laminate pulls';
}

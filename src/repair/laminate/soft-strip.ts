import { step } from '../../formula/index.js';
import { softEdgeFactor, stripModulus } from '../../laminate/index.js';
import type { Modulus } from '../../quantity/index.js';
import type { Workbook } from '../job/workbook.js';

/** Of what a laminate bends and opens at the edge of an opening. */
export interface StripModuli {
  readonly hoopModulus: Modulus;
  readonly axialModulus: Modulus;
  readonly poissonRatio: number;
  readonly shearModulus: Modulus;
}

/** A strip of the laminate that bridges an opening one way: its modulus, and how its edge opens through the thickness. */
export function softStrip(
  { recorder }: Workbook,
  { hoopModulus, axialModulus, poissonRatio, shearModulus }: StripModuli,
  bridgingModulus: Modulus,
  way: string,
): { readonly stripModulus: Modulus; readonly edgeFactor: number } {
  const moduli = { bridgingModulus, hoopModulus, axialModulus, poissonRatio };
  const modulus = step(recorder, 'laminate/strip-modulus', stripModulus, moduli, way);
  const soft = { stripModulus: modulus, shearModulus };
  return { stripModulus: modulus, edgeFactor: step(recorder, 'laminate/soft-edge-factor', softEdgeFactor, soft, way) };
}

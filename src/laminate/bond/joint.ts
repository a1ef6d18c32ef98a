import { positive } from '../../formula/index.js';
import type { Length, Modulus } from '../../quantity/index.js';

/** Two layers and the bond between them, each for a unit of width. */
export interface Joint {
  readonly innerModulus: Modulus;
  /** Half of it, where the inner layer is bonded on both its faces. */
  readonly innerThickness: Length;
  readonly outerModulus: Modulus;
  readonly outerThickness: Length;
  readonly bondShearModulus: Modulus;
  readonly bondThickness: Length;
}

export function checkJoint(joint: Joint): void {
  positive(joint.innerModulus, 'innerModulus', 'Pa');
  positive(joint.innerThickness, 'innerThickness', 'm');
  positive(joint.outerModulus, 'outerModulus', 'Pa');
  positive(joint.outerThickness, 'outerThickness', 'm');
  positive(joint.bondShearModulus, 'bondShearModulus', 'Pa');
  positive(joint.bondThickness, 'bondThickness', 'm');
}

/** Share of the flexibility that is of each layer, and how fast the shear dies out along the bond, per length. */
export function lagOf(joint: Joint): { readonly inner: number; readonly outer: number; readonly lag: number } {
  const [ki, ko] = [joint.innerModulus * joint.innerThickness, joint.outerModulus * joint.outerThickness];
  const flexibility = 1 / ki + 1 / ko;
  return {
    inner: 1 / ki,
    outer: 1 / ko,
    lag: Math.sqrt((joint.bondShearModulus / joint.bondThickness) * flexibility),
  };
}

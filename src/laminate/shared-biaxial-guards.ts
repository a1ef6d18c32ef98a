import { atLeast, below, nonNegative, positive, properFraction } from '../formula/index.js';
import type { BiaxialPair } from './shared-biaxial.js';

/** Refuses what is no pipe with a laminate round it. */
export function checkBiaxialPair(pair: BiaxialPair): void {
  positive(pair.outsideDiameter, 'outsideDiameter', 'm');
  atLeast(pair.wrappedDiameter, pair.outsideDiameter, 'the outside diameter', 'wrappedDiameter', 'm');
  positive(pair.allowableStress, 'allowableStress', 'Pa');
  nonNegative(pair.substrateWall, 'substrateWall', 'm');
  positive(pair.substrateModulus, 'substrateModulus', 'Pa');
  nonNegative(pair.substratePoisson, 'substratePoisson', '');
  below(pair.substratePoisson, 0.5, 'that of a body that keeps its volume', 'substratePoisson', '');
  positive(pair.hoopModulus, 'hoopModulus', 'Pa');
  positive(pair.axialModulus, 'axialModulus', 'Pa');
  properFraction(pair.poissonRatio, 'poissonRatio');
  const most = Math.sqrt(pair.hoopModulus / pair.axialModulus);
  below(pair.poissonRatio, most, 'the root of hoop over axial modulus', 'poissonRatio', '');
  positive(pair.hoopStrain, 'hoopStrain', '');
  positive(pair.axialStrain, 'axialStrain', '');
}

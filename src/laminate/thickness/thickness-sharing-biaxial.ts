import { atMost, finite, formula, nonNegative } from '../../formula/index.js';
import type { Force, GaugePressure, Length, Modulus, Strain, Stress } from '../../quantity/index.js';
import { boundsOf, determinantOf, responseOf, stiffnessOf } from '../shared-biaxial.js';
import { checkBiaxialPair } from '../shared-biaxial-guards.js';

export interface ThicknessSharingBiaxialInput {
  readonly pressure: GaugePressure;
  readonly axialForce: Force;
  readonly leastAxialForce: Force;
  readonly outsideDiameter: Length;
  readonly wrappedDiameter: Length;
  readonly allowableStress: Stress;
  readonly substrateWall: Length;
  readonly substrateModulus: Modulus;
  readonly substratePoisson: number;
  readonly hoopModulus: Modulus;
  readonly axialModulus: Modulus;
  readonly poissonRatio: number;
  readonly hoopStrain: Strain;
  readonly axialStrain: Strain;
}

/**
 * Laminate thickness that keeps both stresses of a pipe with closed ends, and both strains, where pipe and laminate share
 * the load round and along.
 *
 * $$\begin{bmatrix} P D_w/2 \\ F/(\pi D) \end{bmatrix} = \left(\frac{E_s t_s}{1-\nu^2}\begin{bmatrix} 1 & \nu \\ \nu & 1
 *   \end{bmatrix} + \frac{t}{1-\nu_{ca}\nu_{ac}}\begin{bmatrix} E_c & \nu_{ca} E_a \\ \nu_{ca} E_a D_w/D & E_a D_w/D
 *   \end{bmatrix}\right) \begin{bmatrix} \varepsilon_h \\ \varepsilon_x \end{bmatrix}$$
 *
 * Each stress and strain is one over the determinant, so that its limit is a quadratic in t; t is the largest root of all,
 * with the axial force present and absent: from there on every limit holds.
 *
 * @param input.pressure           P, design pressure [Pa], >= 0
 * @param input.axialForce         F with that of the pressure, where it is there [N], >= 0
 * @param input.leastAxialForce    F where the end load is not there: 0, or a push [N], <= 0
 * @param input.outsideDiameter    D, of the pipe [m], > 0
 * @param input.wrappedDiameter    D_w, over the filler [m], >= D
 * @param input.allowableStress    s, of the pipe [Pa], > 0
 * @param input.substrateWall      t_s, wall that stands for the damaged pipe, `wallOfSubstratePressure` [m], >= 0
 * @param input.substrateModulus   E_s [Pa], > 0
 * @param input.substratePoisson   nu, of the pipe, from 0 up to, not including, 0.5
 * @param input.hoopModulus        E_c, of the laminate [Pa], > 0
 * @param input.axialModulus       E_a, of the laminate [Pa], > 0
 * @param input.poissonRatio       nu_ca of the laminate, from 0 up to sqrt(E_c/E_a) and below 1
 * @param input.hoopStrain         eps_h, allowable strain round the pipe, > 0
 * @param input.axialStrain        eps_x, allowable strain along it, > 0
 * @returns laminate thickness [m]; 0 where the pipe holds all of it alone
 * @throws CalculationError `invalid-input`
 * @remarks The form of one direction sets the hoop strain of the pipe to s/E_s, which under an axial pull takes more than s.
 *   On a pipe without pressure during application.
 */
export function thicknessSharingBiaxial(input: ThicknessSharingBiaxialInput): Length {
  const { pressure: P, axialForce: F, leastAxialForce, outsideDiameter: D, wrappedDiameter: Dw } = input;
  nonNegative(P, 'pressure', 'Pa');
  nonNegative(F, 'axialForce', 'N');
  atMost(leastAxialForce, 0, 'no force', 'leastAxialForce', 'N');
  checkBiaxialPair(input);
  const stiffness = stiffnessOf(input);
  const determinant = determinantOf(stiffness);
  let most = 0;
  for (const force of [F, leastAxialForce]) {
    for (const bound of boundsOf(input)) {
      const [none, each] = responseOf(stiffness, bound, (P * Dw) / 2, force / (Math.PI * D));
      const [constant, linear, square] = determinant;
      const { limit } = bound;
      most = Math.max(most, largestRoot(limit * constant - none, limit * linear - each, limit * square));
    }
  }
  finite(most, 'laminate thickness', 'm');
  return most as Length;
}

/** Largest root of c + b t + a t^2 with a above 0; 0 where there is none, since the limit then holds at any thickness. */
function largestRoot(c: number, b: number, a: number): number {
  const inside = b * b - 4 * a * c;
  if (inside < 0) return 0;
  const root = Math.sqrt(inside);
  // Where b is positive, -b + root would cancel.
  return b > 0 ? (-2 * c) / (b + root) : (root - b) / (2 * a);
}

export const thicknessSharingBiaxialFormula = /* @__PURE__ */ formula<ThicknessSharingBiaxialInput, Length>({
  id: 'laminate/thickness-sharing-biaxial',
  title: 'Thickness, pipe with closed ends shares the load both ways',
  compute: thicknessSharingBiaxial,
  equation: {
    algorithm:
      'the largest root, of those of both stresses of the pipe and both strains, each held at its limit with the axial force present and absent; the strains are the loads round and along over the summed stiffness of pipe and laminate',
  },
  inputs: {
    pressure: { symbol: 'P', kind: 'gauge pressure', name: 'design pressure', sample: [0, 20e6] },
    axialForce: { symbol: 'F', kind: 'force', name: 'axial force where it is there', sample: [0, 5e6] },
    leastAxialForce: { symbol: 'F_l', kind: 'force', name: 'axial force without the end load', sample: [-1e5, 0] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.1, 0.6] },
    wrappedDiameter: { symbol: 'D_w', kind: 'length', name: 'diameter over the filler', sample: [0.6, 0.7] },
    allowableStress: { symbol: 's', kind: 'stress', name: 'allowable stress of the pipe', sample: [8e7, 4e8] },
    substrateWall: {
      symbol: 't_s',
      kind: 'length',
      name: 'wall that stands for the damaged pipe',
      sample: [0.001, 0.02],
    },
    substrateModulus: { symbol: 'E_s', kind: 'modulus', name: 'modulus of the pipe', sample: [65e9, 210e9] },
    substratePoisson: { symbol: 'nu', kind: 'number', name: "Poisson's ratio of the pipe", sample: [0.2, 0.4] },
    hoopModulus: { symbol: 'E_c', kind: 'modulus', name: 'hoop modulus of the laminate', sample: [15e9, 80e9] },
    axialModulus: { symbol: 'E_a', kind: 'modulus', name: 'axial modulus of the laminate', sample: [4e9, 15e9] },
    poissonRatio: { symbol: 'nu_ca', kind: 'number', name: "Poisson's ratio, hoop to axial", sample: [0, 0.4] },
    hoopStrain: { symbol: 'eps_h', kind: 'strain', name: 'allowable hoop strain', sample: [0.0005, 0.004] },
    axialStrain: { symbol: 'eps_x', kind: 'strain', name: 'allowable axial strain', sample: [0.0005, 0.004] },
  },
  output: { symbol: 't', kind: 'length', name: 'laminate thickness' },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'bisection on the strains of two layers in plane stress' } },
  limits: [],
});

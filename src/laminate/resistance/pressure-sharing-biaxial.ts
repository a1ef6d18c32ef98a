import { atMost, finite, formula, nonNegative, refuse } from '../../formula/index.js';
import type { Force, GaugePressure, Length, Modulus, Strain, Stress } from '../../quantity/index.js';
import { boundsOf, determinantOf, responseOf, stiffnessOf } from '../shared-biaxial.js';
import { checkBiaxialPair } from '../shared-biaxial-guards.js';

export interface PressureSharingBiaxialInput {
  readonly laminateThickness: Length;
  readonly externalForce: Force;
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
 * Pressure at which a pipe with closed ends and its laminate, sharing the load round and along, come to the first of their
 * limits: the inverse of `thicknessSharingBiaxial`.
 *
 * $$P = \min \frac{l - \beta}{\alpha}$$
 *
 * over both stresses of the pipe and both strains, with the end load present and absent: each is $\alpha P + \beta$, and l
 * its limit.
 *
 * @param input.laminateThickness  t [m], >= 0
 * @param input.externalForce      F_ax, along the pipe beside that of the pressure, where it is there [N], >= 0
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
 * @returns pressure [Pa]
 * @throws CalculationError `invalid-input`; `no-solution` when the external force alone is too much
 */
export function pressureSharingBiaxial(input: PressureSharingBiaxialInput): GaugePressure {
  const { laminateThickness: t, externalForce, leastAxialForce, outsideDiameter: D, wrappedDiameter: Dw } = input;
  nonNegative(t, 'laminateThickness', 'm');
  nonNegative(externalForce, 'externalForce', 'N');
  atMost(leastAxialForce, 0, 'no force', 'leastAxialForce', 'N');
  checkBiaxialPair(input);
  const stiffness = stiffnessOf(input);
  const [constant, linear, square] = determinantOf(stiffness);
  const determinant = constant + linear * t + square * t * t;
  if (determinant === 0) return 0 as GaugePressure;
  let least = Number.POSITIVE_INFINITY;
  const ends = [
    { endLoad: D / 4, force: externalForce },
    { endLoad: 0, force: leastAxialForce },
  ];
  for (const { endLoad, force } of ends) {
    for (const bound of boundsOf(input)) {
      const [unitNone, unitEach] = responseOf(stiffness, bound, Dw / 2, endLoad);
      const [none, each] = responseOf(stiffness, bound, 0, force / (Math.PI * D));
      const byPressure = (unitNone + unitEach * t) / determinant;
      const byForce = (none + each * t) / determinant;
      const left = bound.limit - byForce;
      if (left < 0) {
        const constraint = 'must leave something of both stresses of the pipe and both strains for the pressure';
        refuse({ code: 'no-solution', parameter: 'externalForce', value: externalForce, unit: 'N', constraint });
      }
      if (byPressure > 0) least = Math.min(least, left / byPressure);
    }
  }
  finite(least, 'pressure', 'Pa');
  return least as GaugePressure;
}

export const pressureSharingBiaxialFormula = /* @__PURE__ */ formula<PressureSharingBiaxialInput, GaugePressure>({
  id: 'laminate/pressure-sharing-biaxial',
  title: 'Pressure held, pipe with closed ends shares the load both ways',
  compute: pressureSharingBiaxial,
  equation: {
    algorithm:
      'the least pressure at which one of both stresses of the pipe or both strains is at its limit, with the end load present and absent; each is linear in the pressure',
  },
  inputs: {
    laminateThickness: { symbol: 't', kind: 'length', name: 'laminate thickness', sample: [0, 0.05] },
    externalForce: { symbol: 'F_ax', kind: 'force', name: 'external axial force', sample: [0, 20e3] },
    leastAxialForce: { symbol: 'F_l', kind: 'force', name: 'axial force without the end load', sample: [-1e4, 0] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.1, 0.6] },
    wrappedDiameter: { symbol: 'D_w', kind: 'length', name: 'diameter over the filler', sample: [0.6, 0.7] },
    allowableStress: { symbol: 's', kind: 'stress', name: 'allowable stress of the pipe', sample: [8e7, 4e8] },
    substrateWall: {
      symbol: 't_s',
      kind: 'length',
      name: 'wall that stands for the damaged pipe',
      sample: [0.004, 0.02],
    },
    substrateModulus: { symbol: 'E_s', kind: 'modulus', name: 'modulus of the pipe', sample: [65e9, 210e9] },
    substratePoisson: { symbol: 'nu', kind: 'number', name: "Poisson's ratio of the pipe", sample: [0.2, 0.4] },
    hoopModulus: { symbol: 'E_c', kind: 'modulus', name: 'hoop modulus of the laminate', sample: [15e9, 80e9] },
    axialModulus: { symbol: 'E_a', kind: 'modulus', name: 'axial modulus of the laminate', sample: [4e9, 15e9] },
    poissonRatio: { symbol: 'nu_ca', kind: 'number', name: "Poisson's ratio, hoop to axial", sample: [0, 0.4] },
    hoopStrain: { symbol: 'eps_h', kind: 'strain', name: 'allowable hoop strain', sample: [0.0005, 0.004] },
    axialStrain: { symbol: 'eps_x', kind: 'strain', name: 'allowable axial strain', sample: [0.0005, 0.004] },
  },
  output: { symbol: 'P', kind: 'gauge pressure', name: 'pressure held' },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'bisection on the strains of two layers in plane stress' } },
  limits: [],
});

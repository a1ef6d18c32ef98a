import { below, finite, formula, nonNegative, positive, within } from '../../formula/index.js';
import type { Force, Length, Modulus, Stress, Temperature, ThermalExpansion } from '../../quantity/index.js';

export interface AnchorForceInput {
  readonly outsideDiameter: Length;
  readonly wallThickness: Length;
  readonly hoopStress: Stress;
  readonly modulus: Modulus;
  readonly expansion: ThermalExpansion;
  readonly tieInTemperature: Temperature;
  readonly operatingTemperature: Temperature;
  readonly poissonRatio?: number | undefined;
}

/**
 * Axial force that a restrained, pressurised line puts on an end anchor.
 *
 *$$F = \pi t (D - t) \left( E \alpha (T_2 - T_1) + (0.5 - \nu) S_H \right)$$
 *
 * @param input.outsideDiameter       D [m], > 0
 * @param input.wallThickness         t [m], > 0 and < D/2
 * @param input.hoopStress            S_H [Pa], >= 0
 * @param input.modulus               E of the pipe [Pa], > 0
 * @param input.expansion             alpha of the pipe [1/K], > 0
 * @param input.tieInTemperature      T_1, when the line was tied in [K], > 0
 * @param input.operatingTemperature  T_2 [K], > 0
 * @param input.poissonRatio          nu, from 0 to 0.5; 0.3 when left out
 * @returns force [N]; positive where the line pushes outward on the anchor
 * @throws CalculationError `invalid-input`
 * @remarks Elastic, full restraint, thin wall for the pressure term.
 * @see common practice
 */
export function anchorForce(input: AnchorForceInput): Force {
  const { outsideDiameter: D, wallThickness: t, hoopStress: S, modulus: E, expansion: alpha } = input;
  const { tieInTemperature: T1, operatingTemperature: T2, poissonRatio: nu = 0.3 } = input;
  positive(D, 'outsideDiameter', 'm');
  positive(t, 'wallThickness', 'm');
  below(t, D / 2, 'half the outside diameter', 'wallThickness', 'm');
  nonNegative(S, 'hoopStress', 'Pa');
  positive(E, 'modulus', 'Pa');
  positive(alpha, 'expansion', '1/K');
  positive(T1, 'tieInTemperature', 'K');
  positive(T2, 'operatingTemperature', 'K');
  within(nu, 0, 0.5, 'poissonRatio', '');
  const force = Math.PI * t * (D - t) * (E * alpha * (T2 - T1) + (0.5 - nu) * S);
  finite(force, 'anchor force', 'N');
  return force as Force;
}

export const anchorForceFormula = /* @__PURE__ */ formula<AnchorForceInput, Force>({
  id: 'pipe/anchor-force',
  title: 'Force on the anchor of a restrained line',
  search: ['thrust'],
  compute: anchorForce,
  equation: { expression: 'pi * t * (D - t) * (E * alpha * (T_2 - T_1) + (0.5 - nu) * S_H)' },
  inputs: {
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.0213, 1.2] },
    wallThickness: { symbol: 't', kind: 'length', name: 'wall thickness', sample: [0.001, 0.04] },
    hoopStress: { symbol: 'S_H', kind: 'stress', name: 'hoop stress', sample: [0, 450e6] },
    modulus: { symbol: 'E', kind: 'modulus', name: "Young's modulus", sample: [150e9, 220e9] },
    expansion: { symbol: 'alpha', kind: 'thermal expansion', name: 'thermal expansion', sample: [1e-5, 2e-5] },
    tieInTemperature: { symbol: 'T_1', kind: 'temperature', name: 'temperature at tie-in', sample: [250, 320] },
    operatingTemperature: { symbol: 'T_2', kind: 'temperature', name: 'operating temperature', sample: [250, 450] },
    poissonRatio: { symbol: 'nu', kind: 'number', name: "Poisson's ratio", sample: [0.2, 0.4], default: 0.3 },
  },
  output: { symbol: 'F_a', kind: 'force', name: 'anchor force' },
  sources: [],
  evidence: {
    form: { tag: 'practice', derived: 'strain of the free line less the strain of the held line' },
    poissonRatio: { tag: 'practice', note: '0.3 for steel' },
  },
  limits: [],
});

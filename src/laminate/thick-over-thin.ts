import { below, formula, nonNegative, positive } from '../formula/index.js';
import { wrappedCylinder } from '../mechanics/index.js';
import type { GaugePressure, Length, Modulus, Ratio } from '../quantity/index.js';

export interface ThickOverThinInput {
  readonly pressure: GaugePressure;
  readonly outsideDiameter: Length;
  readonly remainingWall: Length;
  readonly laminateThickness: Length;
  readonly substrateModulus: Modulus;
  readonly substratePoisson: number;
  readonly hoopModulus: Modulus;
  readonly axialModulus: Modulus;
  readonly poissonRatio: number;
  readonly throughPoisson?: number;
}

export interface ThickOverThin {
  readonly pipe: Ratio;
  readonly laminate: Ratio;
}

/**
 * By which share thick walls, bonded, with closed ends, are stressed more than thin ones that share the pressure by their
 * hoop stiffness: the pipe in its bore, the laminate at its inside.
 *
 * $$x_s = \frac{\sigma_s}{E_s e} - 1,\quad x_c = \frac{\sigma_c}{E_c e} - 1,\qquad e = \frac{P D/2}{E_s t_s + E_c t}$$
 *
 * with $\sigma_s$ and $\sigma_c$ by `wrappedCylinder` for the radii $D/2 - t_s$, $D/2$ and $D/2 + t$.
 *
 * @param input.pressure          P, above that at which the laminate was laid [Pa], > 0
 * @param input.outsideDiameter   D, of the pipe [m], > 0
 * @param input.remainingWall     t_s, of the pipe [m], > 0, < D/2
 * @param input.laminateThickness t [m], > 0
 * @param input.substrateModulus  E_s [Pa], > 0
 * @param input.substratePoisson  nu_s, from 0 to below 0.5
 * @param input.hoopModulus       E_c [Pa], > 0
 * @param input.axialModulus      E_a [Pa], > 0
 * @param input.poissonRatio      nu_ca, loaded round, contracting along, from 0 to below sqrt(E_c/E_a)
 * @param input.throughPoisson    nu_z, loaded round or along, contracting through the thickness, from 0 to below 0.5; by default 0.3
 * @returns both shares, below 0 where thin walls are on the safe side
 * @throws CalculationError `invalid-input`
 * @remarks A second opinion: no thickness and no verdict rests on it. Through its thickness the laminate counts as stiff as in the softer
 *   direction of its plane, for nobody measures that.
 * @see the library's own form: `wrappedCylinder` over the balance of a half ring
 */
export function thickOverThin(input: ThickOverThinInput): ThickOverThin {
  const {
    outsideDiameter: D,
    remainingWall: ts,
    laminateThickness: t,
    hoopModulus: Ec,
    axialModulus: Ea,
    throughPoisson = 0.3,
  } = input;
  positive(D, 'outsideDiameter', 'm');
  positive(ts, 'remainingWall', 'm');
  below(ts, D / 2, 'half the outside diameter', 'remainingWall', 'm');
  positive(t, 'laminateThickness', 'm');
  positive(Ec, 'hoopModulus', 'Pa');
  positive(Ea, 'axialModulus', 'Pa');
  nonNegative(throughPoisson, 'throughPoisson', '');
  below(throughPoisson, 0.5, 'that of a body that keeps its volume', 'throughPoisson', '');
  const { pipeOverThin, wrapOverThin } = wrappedCylinder({
    pressure: input.pressure,
    innerRadius: (D / 2 - ts) as Length,
    interfaceRadius: (D / 2) as Length,
    outerRadius: (D / 2 + t) as Length,
    pipeModulus: input.substrateModulus,
    pipePoisson: input.substratePoisson,
    hoopModulus: Ec,
    axialModulus: Ea,
    radialModulus: Math.min(Ec, Ea) as Modulus,
    hoopToAxial: input.poissonRatio,
    hoopToRadial: throughPoisson,
    axialToRadial: throughPoisson,
    ends: 'closed ends',
  });
  return { pipe: pipeOverThin, laminate: wrapOverThin };
}

export const thickOverThinFormula = /* @__PURE__ */ formula<ThickOverThinInput, ThickOverThin>({
  id: 'laminate/thick-over-thin',
  title: 'Stress of thick walls over that of thin ones that share the pressure',
  search: ['second opinion', 'lame', 'sleeve', 'load sharing'],
  compute: thickOverThin,
  equation: {
    algorithm:
      'hoop stress in the bore of the pipe and at the inside of the laminate by mechanics/wrapped-cylinder with closed ends, each over that of thin walls, less 1',
  },
  inputs: {
    pressure: { symbol: 'P', kind: 'gauge pressure', name: 'pressure that both share', sample: [1e5, 60e6] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter of the pipe', sample: [0.06, 1.2] },
    remainingWall: { symbol: 't_s', kind: 'length', name: 'remaining wall', sample: [0.001, 0.02] },
    laminateThickness: { symbol: 't', kind: 'length', name: 'laminate thickness', sample: [0.002, 0.05] },
    substrateModulus: { symbol: 'E_s', kind: 'modulus', name: 'modulus of the pipe', sample: [65e9, 210e9] },
    substratePoisson: { symbol: 'nu_s', kind: 'number', name: "Poisson's ratio of the pipe", sample: [0.2, 0.4] },
    hoopModulus: { symbol: 'E_c', kind: 'modulus', name: 'hoop modulus of the laminate', sample: [15e9, 80e9] },
    axialModulus: { symbol: 'E_a', kind: 'modulus', name: 'axial modulus of the laminate', sample: [5e9, 15e9] },
    poissonRatio: { symbol: 'nu_ca', kind: 'number', name: "Poisson's ratio, hoop to axial", sample: [0, 0.35] },
    throughPoisson: {
      symbol: 'nu_z',
      kind: 'number',
      name: "Poisson's ratio, in the plane to through it",
      default: 0.3,
      sample: [0, 0.4],
    },
  },
  output: {
    pipe: { symbol: 'x_s', kind: 'ratio', name: 'stress in the bore of the pipe over that of thin walls' },
    laminate: { symbol: 'x_c', kind: 'ratio', name: 'stress at the inside of the laminate over that of thin walls' },
  },
  sources: [],
  evidence: {
    form: { tag: 'chosen', derived: 'equilibrium of rings, by differences along the radius' },
    throughPoisson: { tag: 'chosen', note: 'hardly anybody measures it; it moves both shares by a few hundredths' },
  },
  limits: [],
});

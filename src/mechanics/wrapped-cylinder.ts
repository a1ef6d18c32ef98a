import { below, finite, formula, nonNegative, oneOf, positive, refuse, within } from '../formula/index.js';
import type { GaugePressure, Length, Modulus, Ratio, Stress } from '../quantity/index.js';
import { type Ends, wrappedStresses } from './wrapped-layers.js';

const choices = ['plane stress', 'plane strain', 'open ends', 'closed ends'] as const;

export interface WrappedCylinderInput {
  readonly pressure: GaugePressure;
  readonly innerRadius: Length;
  readonly interfaceRadius: Length;
  readonly outerRadius: Length;
  readonly pipeModulus: Modulus;
  readonly pipePoisson: number;
  readonly hoopModulus: Modulus;
  readonly axialModulus: Modulus;
  readonly radialModulus: Modulus;
  readonly hoopToAxial: number;
  readonly hoopToRadial: number;
  readonly axialToRadial: number;
  readonly ends: Ends;
}

/** The whole solution beside the thin-wall sharing of the load. */
export interface WrappedCylinder {
  readonly boreHoop: Stress;
  readonly wrapHoop: Stress;
  readonly interfacePressure: GaugePressure;
  readonly pipeOverThin: Ratio;
  readonly wrapOverThin: Ratio;
}

/**
 * Stresses of a thick pipe in a wrap that differs round, along and through its thickness, and how far they lie over those of
 * thin walls that share the load by their stiffness.
 *
 * $$\sigma_{\theta,s}^{thin} = E_s e,\quad \sigma_{\theta,c}^{thin} = E_c e,\quad
 * e = \frac{P r_m}{E_s (r_m - r_i) + E_c (r_o - r_m)},\qquad u = C_1 r^k + C_2 r^{-k} + H r,\quad k = \sqrt{C_{\theta\theta}/C_{rr}}$$
 *
 * @param input.pressure         P, in the bore above that at which the wrap was laid [Pa], > 0
 * @param input.innerRadius      r_i [m], > 0
 * @param input.interfaceRadius  r_m [m], > r_i
 * @param input.outerRadius      r_o [m], > r_m
 * @param input.pipeModulus      E_s [Pa], > 0
 * @param input.pipePoisson      nu, of the pipe, from 0 to below 0.5
 * @param input.hoopModulus      E_c, of the wrap round the pipe [Pa], > 0
 * @param input.axialModulus     E_a, along it [Pa], > 0
 * @param input.radialModulus    E_r, through its thickness [Pa], > 0
 * @param input.hoopToAxial      nu_ca, loaded round, contracting along, from 0 to below 1
 * @param input.hoopToRadial     nu_cr, loaded round, contracting through, from 0 to below 1
 * @param input.axialToRadial    nu_ar, loaded along, contracting through, from 0 to below 1
 * @param input.ends             `plane stress`, `plane strain`, `open ends` without axial force, or `closed ends` that bear on the bore
 * @returns hoop stress in the bore of the pipe and at the inside of the wrap [Pa], the pressure between them [Pa], and by which share
 *   the two stresses lie over the thin-wall ones, below 0 where these are on the safe side
 * @throws CalculationError `invalid-input`
 * @remarks Elastic, bonded, far from the ends of the wrap. A second opinion on the sharing of load, which takes the hoop strain alone.
 * @see Lekhnitskii, as recalled; NAFEMS R0031/2 with open ends
 */
export function wrappedCylinder(input: WrappedCylinderInput): WrappedCylinder {
  const {
    pressure: P,
    innerRadius: ri,
    interfaceRadius: rm,
    outerRadius: ro,
    pipeModulus: Es,
    hoopModulus: Ec,
  } = input;
  checkInput(input);
  const stresses = wrappedStresses({
    bore: ri / rm,
    outside: ro / rm,
    poissonRatio: input.pipePoisson,
    wrap: {
      hoop: Ec / Es,
      axial: input.axialModulus / Es,
      radial: input.radialModulus / Es,
      hoopToAxial: input.hoopToAxial,
      hoopToRadial: input.hoopToRadial,
      axialToRadial: input.axialToRadial,
    },
    pressure: 1,
    ends: input.ends,
  });
  const thin = rm / (rm - ri + (Ec / Es) * (ro - rm));
  const [bore, wrap] = [stresses.boreHoop / thin - 1, stresses.wrapHoop / (thin * (Ec / Es)) - 1];
  for (const value of [stresses.boreHoop * P, stresses.wrapHoop * P, bore, wrap]) finite(value, 'stress', 'Pa');
  return {
    boreHoop: (stresses.boreHoop * P) as Stress,
    wrapHoop: (stresses.wrapHoop * P) as Stress,
    interfacePressure: (stresses.interfacePressure * P) as GaugePressure,
    pipeOverThin: bore as Ratio,
    wrapOverThin: wrap as Ratio,
  };
}

function checkInput(input: WrappedCylinderInput): void {
  const { innerRadius: ri, interfaceRadius: rm, outerRadius: ro } = input;
  positive(input.pressure, 'pressure', 'Pa');
  positive(ri, 'innerRadius', 'm');
  positive(rm, 'interfaceRadius', 'm');
  positive(ro, 'outerRadius', 'm');
  positive(rm - ri, 'interfaceRadius - innerRadius', 'm');
  positive(ro - rm, 'outerRadius - interfaceRadius', 'm');
  positive(input.pipeModulus, 'pipeModulus', 'Pa');
  positive(input.hoopModulus, 'hoopModulus', 'Pa');
  positive(input.axialModulus, 'axialModulus', 'Pa');
  positive(input.radialModulus, 'radialModulus', 'Pa');
  nonNegative(input.pipePoisson, 'pipePoisson', '');
  below(input.pipePoisson, 0.5, 'that of a body that keeps its volume', 'pipePoisson', '');
  within(input.hoopToAxial, 0, 1, 'hoopToAxial', '');
  within(input.hoopToRadial, 0, 1, 'hoopToRadial', '');
  within(input.axialToRadial, 0, 1, 'axialToRadial', '');
  oneOf(input.ends, choices, 'ends');
  const work = workLeft(input);
  if (!(work > 0))
    refuse({
      code: 'invalid-input',
      parameter: 'hoopToAxial',
      value: input.hoopToAxial,
      unit: '',
      constraint:
        "must fit the moduli and the other two Poisson's ratios: with these, straining the wrap would give energy",
    });
}

/** Determinant of the compliance over its diagonal: above 0 only where straining costs work; each pair alone is then above 0 too. */
function workLeft(input: WrappedCylinderInput): number {
  const {
    hoopModulus: Ec,
    axialModulus: Ea,
    radialModulus: Er,
    hoopToAxial: ca,
    hoopToRadial: cr,
    axialToRadial: ar,
  } = input;
  const [a, b, c] = [ca * ca * (Ea / Ec), cr * cr * (Er / Ec), ar * ar * (Er / Ea)];
  return 1 - a - b - c - 2 * ca * cr * ar * (Er / Ec);
}

export const wrappedCylinderFormula = /* @__PURE__ */ formula<WrappedCylinderInput, WrappedCylinder>({
  id: 'mechanics/wrapped-cylinder',
  title: 'Pipe in a wrap, thick walls beside thin ones',
  search: ['sleeve', 'shrink fit', 'lame'],
  compute: wrappedCylinder,
  equation: {
    algorithm:
      'displacement A r + B/r in the pipe and C r^k + D r^-k + H r in the wrap, with one axial strain; five linear equations of the pressure, the free outside, equal stress and radius between them, and the axial force of the ends',
  },
  inputs: {
    pressure: { symbol: 'P', kind: 'gauge pressure', name: 'pressure in the bore', sample: [1e5, 60e6] },
    innerRadius: { symbol: 'r_i', kind: 'length', name: 'bore radius of the pipe', sample: [0.07, 0.08] },
    interfaceRadius: { symbol: 'r_m', kind: 'length', name: 'outside radius of the pipe', sample: [0.081, 0.09] },
    outerRadius: { symbol: 'r_o', kind: 'length', name: 'outside radius of the wrap', sample: [0.092, 0.12] },
    pipeModulus: { symbol: 'E_s', kind: 'modulus', name: 'modulus of the pipe', sample: [65e9, 210e9] },
    pipePoisson: { symbol: 'nu', kind: 'number', name: "Poisson's ratio of the pipe", sample: [0.2, 0.4] },
    hoopModulus: { symbol: 'E_c', kind: 'modulus', name: 'hoop modulus of the wrap', sample: [15e9, 130e9] },
    axialModulus: { symbol: 'E_a', kind: 'modulus', name: 'axial modulus of the wrap', sample: [5e9, 15e9] },
    radialModulus: { symbol: 'E_r', kind: 'modulus', name: 'modulus through the wrap', sample: [3e9, 9e9] },
    hoopToAxial: { symbol: 'nu_ca', kind: 'number', name: "Poisson's ratio, hoop to axial", sample: [0, 0.35] },
    hoopToRadial: { symbol: 'nu_cr', kind: 'number', name: "Poisson's ratio, hoop to radial", sample: [0, 0.35] },
    axialToRadial: { symbol: 'nu_ar', kind: 'number', name: "Poisson's ratio, axial to radial", sample: [0, 0.35] },
    ends: {
      symbol: 'ends',
      kind: 'choice',
      name: 'ends',
      choices: ['plane stress', 'plane strain', 'open ends', 'closed ends'],
    },
  },
  output: {
    boreHoop: { symbol: 'sigma_s', kind: 'stress', name: 'hoop stress in the bore of the pipe' },
    wrapHoop: { symbol: 'sigma_c', kind: 'stress', name: 'hoop stress at the inside of the wrap' },
    interfacePressure: { symbol: 'q', kind: 'gauge pressure', name: 'pressure between pipe and wrap' },
    pipeOverThin: { symbol: 'x_s', kind: 'ratio', name: 'stress of the pipe over that of thin walls' },
    wrapOverThin: { symbol: 'x_c', kind: 'ratio', name: 'stress of the wrap over that of thin walls' },
  },
  sources: [{ key: 'nafems-r0031', locator: 'R0031/2, load case 1' }],
  evidence: { form: { tag: 'recalled', derived: 'equilibrium of rings, by differences along the radius' } },
  limits: [],
});

import { formula, nonNegative, positive, within } from '../formula/index.js';
import type { GaugePressure, Length, Modulus } from '../quantity/index.js';

export interface TwoLayerInterfacePressureInput {
  readonly pressure: GaugePressure;
  readonly interference?: Length | undefined;
  readonly innerRadius: Length;
  readonly interfaceRadius: Length;
  readonly outerRadius: Length;
  readonly innerModulus: Modulus;
  readonly outerModulus: Modulus;
  readonly innerPoissonRatio: number;
  readonly outerPoissonRatio: number;
}

/**
 * Pressure between a thick cylinder and one round it, a pipe and its laminate, from pressure in the bore and from shrinkage.
 *
 * $$q = \frac{\dfrac{2 P r_i^2}{r_m^2 - r_i^2} + \dfrac{E_i \delta}{2 r_m}}
 *   {\dfrac{r_m^2 + r_i^2}{r_m^2 - r_i^2} - \nu_i + \dfrac{E_i}{E_o}\left(\dfrac{r_o^2 + r_m^2}{r_o^2 - r_m^2} + \nu_o\right)}$$
 *
 * @param input.pressure          P, pressure in the bore above that at which the outer layer was put on [Pa], >= 0
 * @param input.interference      delta, outside diameter of the inner less bore of the outer layer before assembly [m], >= 0;
 *   0 when left out
 * @param input.innerRadius       r_i, bore of the inner layer [m], > 0
 * @param input.interfaceRadius   r_m, where the layers meet [m], > r_i
 * @param input.outerRadius       r_o, outside of the outer layer [m], > r_m
 * @param input.innerModulus      E_i [Pa], > 0
 * @param input.outerModulus      E_o [Pa], > 0
 * @param input.innerPoissonRatio nu_i, from 0 to 0.5
 * @param input.outerPoissonRatio nu_o, from 0 to 0.5
 * @returns pressure between the layers [Pa]
 * @throws CalculationError `invalid-input`
 * @remarks Plane stress; both layers elastic and isotropic, so a laminate that is softer through its thickness than round
 *   the pipe takes less. The stresses follow from the thick cylinder with q outside the inner and inside the outer layer.
 * @see Bhandari, Design of Machine Elements, compound cylinders
 */
export function twoLayerInterfacePressure(input: TwoLayerInterfacePressureInput): GaugePressure {
  const { pressure: P, interference: delta = 0, innerRadius: ri, interfaceRadius: rm, outerRadius: ro } = input;
  const { innerModulus: Ei, outerModulus: Eo, innerPoissonRatio: nui, outerPoissonRatio: nuo } = input;
  nonNegative(P, 'pressure', 'Pa');
  nonNegative(delta, 'interference', 'm');
  positive(ri, 'innerRadius', 'm');
  positive(rm, 'interfaceRadius', 'm');
  positive(ro, 'outerRadius', 'm');
  positive(rm - ri, 'interfaceRadius - innerRadius', 'm');
  positive(ro - rm, 'outerRadius - interfaceRadius', 'm');
  positive(Ei, 'innerModulus', 'Pa');
  positive(Eo, 'outerModulus', 'Pa');
  within(nui, 0, 0.5, 'innerPoissonRatio', '');
  within(nuo, 0, 0.5, 'outerPoissonRatio', '');
  const inner = (rm - ri) * (rm + ri);
  const outer = (ro - rm) * (ro + rm);
  const give = (rm * rm + ri * ri) / inner - nui + (Ei / Eo) * ((ro * ro + rm * rm) / outer + nuo);
  const pressure = ((2 * P * ri * ri) / inner + (Ei * delta) / (2 * rm)) / give;
  nonNegative(pressure, 'interface pressure', 'Pa');
  return pressure as GaugePressure;
}

export const twoLayerInterfacePressureFormula = /* @__PURE__ */ formula<TwoLayerInterfacePressureInput, GaugePressure>({
  id: 'mechanics/two-layer-interface-pressure',
  title: 'Pressure between two cylinders, one round the other',
  search: ['shrink fit', 'interface pressure', 'sleeve'],
  compute: twoLayerInterfacePressure,
  equation: {
    where: [
      { symbol: 'k_i', kind: 'number', expression: '(r_m^2 + r_i^2) / ((r_m - r_i) * (r_m + r_i)) - nu_i' },
      { symbol: 'k_o', kind: 'number', expression: '(r_o^2 + r_m^2) / ((r_o - r_m) * (r_o + r_m)) + nu_o' },
    ],
    expression: '(2 * P * r_i^2 / ((r_m - r_i) * (r_m + r_i)) + E_i * delta / (2 * r_m)) / (k_i + E_i / E_o * k_o)',
  },
  inputs: {
    pressure: { symbol: 'P', kind: 'gauge pressure', name: 'pressure in the bore', sample: [0, 60e6] },
    interference: {
      symbol: 'delta',
      kind: 'length',
      name: 'interference on the diameter',
      sample: [0, 0.0002],
      default: 0,
    },
    innerRadius: { symbol: 'r_i', kind: 'length', name: 'bore of the inner layer', sample: [0.05, 0.25] },
    interfaceRadius: {
      symbol: 'r_m',
      kind: 'length',
      name: 'radius where they meet',
      sample: [0.2, 0.3],
      usual: [0.005, 0.9],
    },
    outerRadius: { symbol: 'r_o', kind: 'length', name: 'outside of the outer layer', sample: [0.28, 0.4] },
    innerModulus: { symbol: 'E_i', kind: 'modulus', name: 'modulus of the inner layer', sample: [60e9, 210e9] },
    outerModulus: { symbol: 'E_o', kind: 'modulus', name: 'modulus of the outer layer', sample: [5e9, 210e9] },
    innerPoissonRatio: { symbol: 'nu_i', kind: 'number', name: "Poisson's ratio, inner", sample: [0.2, 0.4] },
    outerPoissonRatio: { symbol: 'nu_o', kind: 'number', name: "Poisson's ratio, outer", sample: [0.1, 0.4] },
  },
  output: { symbol: 'q', kind: 'gauge pressure', name: 'pressure between the layers' },
  sources: [
    { key: 'bhandari', locator: 'compound cylinders, example 22.6' },
    { key: 'mechanics-notes', locator: 'Lame equations' },
  ],
  evidence: { form: { tag: 'secondary', derived: 'four linear equations for the displacements of both layers' } },
  limits: [],
});

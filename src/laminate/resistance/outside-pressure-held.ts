import { finite, formula, nonNegative, positive, properFraction, within } from '../../formula/index.js';
import type { GaugePressure, Length, Modulus } from '../../quantity/index.js';
import { checkReciprocity } from '../reciprocity.js';

export interface OutsidePressureHeldInput {
  readonly laminateThickness: Length;
  readonly outsideDiameter: Length;
  readonly hoopModulus: Modulus;
  readonly axialModulus: Modulus;
  readonly poissonRatio: number;
  readonly factor?: number;
}

/**
 * Pressure from outside that a laminate alone bears on a long pipe: the inverse of `thicknessOutsidePressure`.
 *
 * $$P_{ext} = \frac{2 E_c}{f (1 - \nu^2)} \left(\frac{t}{D}\right)^3, \qquad \nu^2 = \nu_{ca}^2 \frac{E_a}{E_c}$$
 *
 * @param input.laminateThickness t [m], >= 0
 * @param input.outsideDiameter   D [m], > 0
 * @param input.hoopModulus       E_c, of the laminate [Pa], > 0
 * @param input.axialModulus      E_a, of the laminate [Pa], > 0
 * @param input.poissonRatio      nu_ca, loaded along the hoop, contracting along the pipe, 0 to 1
 * @param input.factor            f, on the buckling pressure, 1 to 100; 3 unless given
 * @returns pressure from outside [Pa]
 * @throws CalculationError `invalid-input`
 * @see ISO 24817:2017, 7.5; ASME PCC-2, 401-3.4, external loads, as recalled
 */
export function outsidePressureHeld(input: OutsidePressureHeldInput): GaugePressure {
  const { laminateThickness: t, outsideDiameter: D, hoopModulus: Ec, axialModulus: Ea, poissonRatio: nu } = input;
  const { factor: f = 3 } = input;
  nonNegative(t, 'laminateThickness', 'm');
  positive(D, 'outsideDiameter', 'm');
  positive(Ec, 'hoopModulus', 'Pa');
  positive(Ea, 'axialModulus', 'Pa');
  properFraction(nu, 'poissonRatio');
  within(f, 1, 100, 'factor', '');
  const nu2 = checkReciprocity(nu, Ec, Ea);
  const s = t / D;
  const pressure = (2 * Ec * s * s * s) / (f * (1 - nu2));
  finite(pressure, 'pressure from outside', 'Pa');
  return pressure as GaugePressure;
}

export const outsidePressureHeldFormula = /* @__PURE__ */ formula<OutsidePressureHeldInput, GaugePressure>({
  id: 'laminate/outside-pressure-held',
  title: 'Pressure held, from outside',
  search: ['vacuum', 'collapse', 'buckling', 'external pressure'],
  compute: outsidePressureHeld,
  equation: {
    where: [{ symbol: 'nu_2', kind: 'number', expression: 'nu_ca^2 * E_a / E_c' }],
    expression: '2 * E_c / (f * (1 - nu_2)) * (t / D)^3',
  },
  inputs: {
    laminateThickness: { symbol: 't', kind: 'length', name: 'laminate thickness', sample: [0.001, 0.05] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.0213, 1.2] },
    hoopModulus: { symbol: 'E_c', kind: 'modulus', name: 'hoop modulus of the laminate', sample: [8e9, 80e9] },
    axialModulus: { symbol: 'E_a', kind: 'modulus', name: 'axial modulus of the laminate', sample: [4e9, 40e9] },
    poissonRatio: { symbol: 'nu_ca', kind: 'number', name: "Poisson's ratio, hoop to axial", sample: [0, 0.4] },
    factor: { symbol: 'f', kind: 'number', name: 'factor on the buckling pressure', sample: [1, 5], default: 3 },
  },
  output: { symbol: 'P_ext', kind: 'gauge pressure', name: 'pressure held from outside' },
  sources: [
    { key: 'iso-24817', locator: '7.5, as recalled' },
    { key: 'asme-pcc-2', locator: '401-3.4, as recalled' },
  ],
  evidence: {
    form: { tag: 'recalled', derived: 'least energy quotient of a ring over its lobes' },
    'factor 3': { tag: 'recalled', note: 'to be confirmed' },
  },
  limits: [],
});

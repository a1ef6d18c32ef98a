import { finite, formula, nonNegative, positive, properFraction, within } from '../../formula/index.js';
import type { GaugePressure, Length, Modulus } from '../../quantity/index.js';
import { checkReciprocity } from '../reciprocity.js';

export interface ThicknessOutsidePressureInput {
  readonly outsidePressure: GaugePressure;
  readonly outsideDiameter: Length;
  readonly hoopModulus: Modulus;
  readonly axialModulus: Modulus;
  readonly poissonRatio: number;
  readonly factor?: number;
}

/**
 * Laminate thickness that keeps a long pipe round under pressure from outside, the steel not counted.
 *
 * $$t = D \left(\frac{f P_{ext} (1 - \nu^2)}{2 E_c}\right)^{1/3}, \qquad \nu^2 = \nu_{ca}^2 \frac{E_a}{E_c}$$
 *
 * @param input.outsidePressure  P_ext, outside above inside [Pa], >= 0
 * @param input.outsideDiameter  D [m], > 0
 * @param input.hoopModulus      E_c, of the laminate [Pa], > 0
 * @param input.axialModulus     E_a, of the laminate [Pa], > 0
 * @param input.poissonRatio     nu_ca, loaded along the hoop, contracting along the pipe, 0 to 1
 * @param input.factor           f, on the buckling pressure, 1 to 100; 3 unless given
 * @returns laminate thickness [m]; 0 without pressure from outside
 * @throws CalculationError `invalid-input`
 * @remarks Long ring, perfectly round, no help of the pipe below or of its ends. The modulus is that of a short test: a
 *   pressure that stays for years makes the laminate creep, which the factor must cover.
 * @see ISO 24817:2017, 7.5; ASME PCC-2, 401-3.4, external loads, as recalled
 */
export function thicknessOutsidePressure(input: ThicknessOutsidePressureInput): Length {
  const { outsidePressure: P, outsideDiameter: D, hoopModulus: Ec, axialModulus: Ea, poissonRatio: nu } = input;
  const { factor: f = 3 } = input;
  nonNegative(P, 'outsidePressure', 'Pa');
  positive(D, 'outsideDiameter', 'm');
  positive(Ec, 'hoopModulus', 'Pa');
  positive(Ea, 'axialModulus', 'Pa');
  properFraction(nu, 'poissonRatio');
  within(f, 1, 100, 'factor', '');
  const nu2 = checkReciprocity(nu, Ec, Ea);
  const t = D * Math.cbrt((f * P * (1 - nu2)) / (2 * Ec));
  finite(t, 'laminate thickness', 'm');
  return t as Length;
}

export const thicknessOutsidePressureFormula = /* @__PURE__ */ formula<ThicknessOutsidePressureInput, Length>({
  id: 'laminate/thickness-outside-pressure',
  title: 'Thickness, pressure from outside',
  search: ['vacuum', 'collapse', 'buckling'],
  compute: thicknessOutsidePressure,
  equation: {
    where: [{ symbol: 'nu_2', kind: 'number', expression: 'nu_ca^2 * E_a / E_c' }],
    expression: 'D * cbrt(f * P_ext * (1 - nu_2) / (2 * E_c))',
  },
  inputs: {
    outsidePressure: { symbol: 'P_ext', kind: 'gauge pressure', name: 'pressure from outside', sample: [0, 1e6] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.0213, 1.2] },
    hoopModulus: { symbol: 'E_c', kind: 'modulus', name: 'hoop modulus of the laminate', sample: [8e9, 80e9] },
    axialModulus: { symbol: 'E_a', kind: 'modulus', name: 'axial modulus of the laminate', sample: [4e9, 40e9] },
    poissonRatio: { symbol: 'nu_ca', kind: 'number', name: "Poisson's ratio, hoop to axial", sample: [0, 0.4] },
    factor: { symbol: 'f', kind: 'number', name: 'factor on the buckling pressure', sample: [1, 5], default: 3 },
  },
  output: { symbol: 't', kind: 'length', name: 'laminate thickness' },
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

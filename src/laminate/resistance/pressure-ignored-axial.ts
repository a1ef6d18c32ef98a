import { finite, formula, nonNegative, positive, properFraction, refuse } from '../../formula/index.js';
import type { Force, GaugePressure, Length, Modulus, Strain } from '../../quantity/index.js';

export interface PressureIgnoredAxialInput {
  readonly laminateThickness: Length;
  readonly outsideDiameter: Length;
  readonly hoopModulus: Modulus;
  readonly axialModulus: Modulus;
  readonly poissonRatio: number;
  readonly allowableStrain: Strain;
  readonly externalForce: Force;
}

/**
 * Pressure in a closed pipe at which a laminate that carries everything reaches its axial strain.
 *
 * $$P = \frac{\varepsilon_a t - F / (\pi D E_a)}{D \left(\frac{1}{4 E_a} - \frac{\nu_{ca}}{2 E_c}\right)}$$
 *
 * @param input.laminateThickness t [m], >= 0
 * @param input.outsideDiameter   D [m], > 0
 * @param input.hoopModulus       E_c [Pa], > 0
 * @param input.axialModulus      E_a [Pa], > 0
 * @param input.poissonRatio      nu_ca, from 0 up to, not including, 1
 * @param input.allowableStrain   eps_a, > 0
 * @param input.externalForce     F, along the pipe beside that of the pressure [N], >= 0
 * @returns pressure [Pa]
 * @throws CalculationError `invalid-input`; `no-solution` when the hoop load relieves the axial strain as fast as the
 *   end load adds to it, or when the force alone is too much
 * @see ISO 24817:2017, 7.5.5; ASME PCC-2, Eq. 9, as recalled, solved for the pressure of a closed end
 */
export function pressureIgnoredAxial(input: PressureIgnoredAxialInput): GaugePressure {
  const { laminateThickness: t, outsideDiameter: D, hoopModulus: Ec, axialModulus: Ea } = input;
  const { poissonRatio: nu, allowableStrain: eps, externalForce: F } = input;
  nonNegative(t, 'laminateThickness', 'm');
  positive(D, 'outsideDiameter', 'm');
  positive(Ec, 'hoopModulus', 'Pa');
  positive(Ea, 'axialModulus', 'Pa');
  properFraction(nu, 'poissonRatio');
  positive(eps, 'allowableStrain', '');
  nonNegative(F, 'externalForce', 'N');
  if (!pressureIgnoredAxialHasLimit(input)) {
    const constraint =
      'must be below {limit}: above it the hoop load shortens the pipe more than the end load lengthens it, and no pressure reaches the axial strain';
    refuse({ code: 'no-solution', parameter: 'poissonRatio', value: nu, unit: '', constraint, limit: Ec / (2 * Ea) });
  }
  const left = eps * t - F / (Math.PI * D * Ea);
  if (!(left >= 0)) {
    const constraint = 'must be at most {limit}, which takes all of the axial strain';
    const limit = eps * t * Math.PI * D * Ea;
    refuse({ code: 'no-solution', parameter: 'externalForce', value: F, unit: 'N', constraint, limit });
  }
  const P = left / (D * (1 / (4 * Ea) - nu / (2 * Ec)));
  finite(P, 'pressure', 'Pa');
  return P as GaugePressure;
}

/**
 * Whether a rising pressure lengthens the laminate of a closed pipe at all.
 *
 * @param input moduli and Poisson's ratio of the laminate
 */
export function pressureIgnoredAxialHasLimit(
  input: Pick<PressureIgnoredAxialInput, 'hoopModulus' | 'axialModulus' | 'poissonRatio'>,
): boolean {
  return 1 / (4 * input.axialModulus) - input.poissonRatio / (2 * input.hoopModulus) > 0;
}

export const pressureIgnoredAxialFormula = /* @__PURE__ */ formula<PressureIgnoredAxialInput, GaugePressure>({
  id: 'laminate/pressure-ignored-axial',
  title: 'Pressure held, laminate carries everything, axial',
  search: ['end load', 'axial strength'],
  compute: pressureIgnoredAxial,
  equation: { expression: '(eps_a * t - F / (pi * D * E_a)) / (D * (1 / (4 * E_a) - nu_ca / (2 * E_c)))' },
  inputs: {
    laminateThickness: { symbol: 't', kind: 'length', name: 'laminate thickness', sample: [0.004, 0.03] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.06, 1.2] },
    hoopModulus: { symbol: 'E_c', kind: 'modulus', name: 'hoop modulus of the laminate', sample: [15e9, 60e9] },
    axialModulus: { symbol: 'E_a', kind: 'modulus', name: 'axial modulus of the laminate', sample: [8e9, 30e9] },
    poissonRatio: { symbol: 'nu_ca', kind: 'number', name: "Poisson's ratio, hoop to axial", sample: [0, 0.3] },
    allowableStrain: { symbol: 'eps_a', kind: 'strain', name: 'allowable axial strain', sample: [0.001, 0.004] },
    externalForce: { symbol: 'F', kind: 'force', name: 'external axial force', sample: [0, 50e3] },
  },
  output: { symbol: 'P', kind: 'gauge pressure', name: 'pressure held' },
  sources: [
    { key: 'iso-24817', locator: '7.5.5, as recalled' },
    { key: 'asme-pcc-2', locator: '401-3.4, Eq. 9, as recalled' },
  ],
  evidence: { form: { tag: 'recalled', derived: 'inverse of the laminate stiffness' } },
  limits: [],
});

import { finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { Force, GaugePressure, Length, Moment } from '../../quantity/index.js';

export interface EquivalentAxialForceInput {
  readonly pressure: GaugePressure;
  readonly outsideDiameter: Length;
  readonly axialForce: Force;
  readonly shearForce: Force;
  readonly bendingMoment: Moment;
  readonly torque: Moment;
}

/**
 * Axial force that stands for pressure on closed ends and all external loads together.
 *
 * $$F_{eq} = \frac{\pi}{4} P D^2 + \sqrt{F_{ax}^2 + 4 F_{sh}^2} + \frac{4}{D}\sqrt{M_{ax}^2 + M_{to}^2}$$
 *
 * @param input.pressure         P, internal gauge pressure [Pa], >= 0
 * @param input.outsideDiameter  D [m], > 0
 * @param input.axialForce       F_ax, external axial force without that of the pressure [N]; a push counts as a pull
 * @param input.shearForce       F_sh, size of the shear force [N], >= 0
 * @param input.bendingMoment    M_ax, size of the bending moment [N m], >= 0
 * @param input.torque           M_to, size of the torque [N m], >= 0
 * @returns equivalent axial force, tensile [N]
 * @throws CalculationError `invalid-input`
 * @remarks Each root is the Tresca combination of a normal and a shear stress on the thin ring; the shear force counts by
 *   its mean stress. Loads that are absent are stated as 0, since none is assumed to be.
 * @see ISO 24817:2017, 7.5, as recalled
 */
export function equivalentAxialForce(input: EquivalentAxialForceInput): Force {
  const { pressure: P, outsideDiameter: D, axialForce: Fa, shearForce: Fs, bendingMoment: Ma, torque: Mt } = input;
  nonNegative(P, 'pressure', 'Pa');
  positive(D, 'outsideDiameter', 'm');
  finite(Fa, 'axialForce', 'N');
  nonNegative(Fs, 'shearForce', 'N');
  nonNegative(Ma, 'bendingMoment', 'N m');
  nonNegative(Mt, 'torque', 'N m');
  const force = (Math.PI / 4) * P * D * D + Math.sqrt(Fa * Fa + 4 * Fs * Fs) + (4 / D) * Math.sqrt(Ma * Ma + Mt * Mt);
  finite(force, 'equivalent axial force', 'N');
  return force as Force;
}

export const equivalentAxialForceFormula = /* @__PURE__ */ formula<EquivalentAxialForceInput, Force>({
  id: 'laminate/equivalent-axial-force',
  title: 'Equivalent axial force',
  search: ['end load', 'bending', 'axial load'],
  compute: equivalentAxialForce,
  equation: {
    expression: 'pi / 4 * P * D^2 + sqrt(F_ax^2 + 4 * F_sh^2) + 4 / D * sqrt(M_ax^2 + M_to^2)',
  },
  inputs: {
    pressure: { symbol: 'P', kind: 'gauge pressure', name: 'internal pressure', sample: [0, 20e6] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.0213, 1.2] },
    axialForce: { symbol: 'F_ax', kind: 'force', name: 'external axial force', sample: [-1e6, 1e6] },
    shearForce: { symbol: 'F_sh', kind: 'force', name: 'shear force', sample: [0, 1e5] },
    bendingMoment: { symbol: 'M_ax', kind: 'moment', name: 'bending moment', sample: [0, 1e5] },
    torque: { symbol: 'M_to', kind: 'moment', name: 'torque', sample: [0, 1e5] },
  },
  output: { symbol: 'F_eq', kind: 'force', name: 'equivalent axial force' },
  sources: [
    { key: 'iso-24817', locator: '7.5, as recalled' },
    { key: 'asme-pcc-2', locator: '401-3.4, as recalled' },
  ],
  evidence: { form: { tag: 'recalled', derived: 'Tresca combination of thin-ring stresses' } },
  limits: [],
});

import { finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { Force, GaugePressure, Length, Moment } from '../../quantity/index.js';

export interface EquivalentPressureInput {
  readonly pressure: GaugePressure;
  readonly outsideDiameter: Length;
  readonly shearForce: Force;
  readonly torque: Moment;
}

/**
 * Internal pressure that stands for pressure, shear force and torque together in the hoop direction.
 *
 * $$P_{eq} = P \left(1 + \frac{16}{(\pi P D^2)^2}\left(F_{sh} + \frac{2 M_{to}}{D}\right)^2\right)$$
 *
 * @param input.pressure         P, internal gauge pressure [Pa], > 0
 * @param input.outsideDiameter  D [m], > 0
 * @param input.shearForce       F_sh, size of the shear force [N], >= 0
 * @param input.torque           M_to, size of the torque [N m], >= 0
 * @returns equivalent pressure [Pa], never below P
 * @throws CalculationError `invalid-input`
 * @remarks The factor 16 is recalled. It adds twice what Tresca adds for small shear, so it errs on the safe side.
 *   At P = 0 the form has no value.
 * @see ISO 24817:2017, 7.5, as recalled
 */
export function equivalentPressure(input: EquivalentPressureInput): GaugePressure {
  const { pressure: P, outsideDiameter: D, shearForce: F, torque: M } = input;
  positive(P, 'pressure', 'Pa');
  positive(D, 'outsideDiameter', 'm');
  nonNegative(F, 'shearForce', 'N');
  nonNegative(M, 'torque', 'N m');
  const x = (4 * (F + (2 * M) / D)) / (Math.PI * P * D * D);
  const pressure = P * (1 + x * x);
  finite(pressure, 'equivalent pressure', 'Pa');
  return pressure as GaugePressure;
}

export const equivalentPressureFormula = /* @__PURE__ */ formula<EquivalentPressureInput, GaugePressure>({
  id: 'laminate/equivalent-pressure',
  title: 'Equivalent pressure',
  compute: equivalentPressure,
  equation: { expression: 'P * (1 + 16 / (pi * P * D^2)^2 * (F_sh + 2 * M_to / D)^2)' },
  inputs: {
    pressure: { symbol: 'P', kind: 'gauge pressure', name: 'internal pressure', sample: [1e5, 20e6] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.0213, 1.2] },
    shearForce: { symbol: 'F_sh', kind: 'force', name: 'shear force', sample: [0, 1e5] },
    torque: { symbol: 'M_to', kind: 'moment', name: 'torque', sample: [0, 1e5] },
  },
  output: { symbol: 'P_eq', kind: 'gauge pressure', name: 'equivalent pressure' },
  sources: [
    { key: 'iso-24817', locator: '7.5, as recalled' },
    { key: 'asme-pcc-2', locator: '401-3.4, as recalled' },
  ],
  evidence: { form: { tag: 'recalled' }, 'factor 16': { tag: 'recalled', note: 'to be confirmed' } },
  limits: [],
});

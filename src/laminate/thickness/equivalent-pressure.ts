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
 * $$P_{eq} = \begin{cases} P + P_q^2 / P & P \ge P_q \\ 2 P_q & \text{else} \end{cases}, \qquad P_q = \frac{4 q}{D},
 *   \quad q = \frac{F_{sh} + 2 M_{to} / D}{\pi D}$$
 *
 * @param input.pressure         P, internal gauge pressure [Pa], >= 0
 * @param input.outsideDiameter  D [m], > 0
 * @param input.shearForce       F_sh, size of the shear force [N], >= 0
 * @param input.torque           M_to, size of the torque [N m], >= 0
 * @returns equivalent pressure [Pa], never below P
 * @throws CalculationError `invalid-input`
 * @remarks P (1 + 4 x^2) is the recalled form, x the shear flow q over the hoop force P D/2. Its factor adds twice what
 *   Tresca adds for small shear. Above x = 1/2, which is P below P_q, it falls as the pressure rises and has no value at
 *   P = 0: there the least counts that it gives at any pressure, 8 q/D, which is twice the Tresca value at P = 0. So more
 *   pressure never asks for less.
 * @see ISO 24817:2017, 7.5, as recalled, where P is at least P_q; below it a choice of this library
 */
export function equivalentPressure(input: EquivalentPressureInput): GaugePressure {
  const { pressure: P, outsideDiameter: D, shearForce: F, torque: M } = input;
  nonNegative(P, 'pressure', 'Pa');
  positive(D, 'outsideDiameter', 'm');
  nonNegative(F, 'shearForce', 'N');
  nonNegative(M, 'torque', 'N m');
  const Pq = (4 * (F + (2 * M) / D)) / (Math.PI * D * D);
  const pressure = P < Pq ? 2 * Pq : Pq === 0 ? P : P + (Pq * Pq) / P;
  finite(pressure, 'equivalent pressure', 'Pa');
  return pressure as GaugePressure;
}

export const equivalentPressureFormula = /* @__PURE__ */ formula<EquivalentPressureInput, GaugePressure>({
  id: 'laminate/equivalent-pressure',
  title: 'Equivalent pressure',
  search: ['combined load', 'torsion'],
  compute: equivalentPressure,
  equation: {
    where: [{ symbol: 'P_q', kind: 'gauge pressure', expression: '4 * (F_sh + 2 * M_to / D) / (pi * D^2)' }],
    branches: [
      { when: 'P < P_q', expression: '2 * P_q' },
      { when: 'P_q == 0 * P', expression: 'P' },
      { expression: 'P + P_q^2 / P' },
    ],
  },
  inputs: {
    pressure: { symbol: 'P', kind: 'gauge pressure', name: 'internal pressure', sample: [0, 20e6] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.0213, 1.2] },
    shearForce: { symbol: 'F_sh', kind: 'force', name: 'shear force', sample: [0, 1e5] },
    torque: { symbol: 'M_to', kind: 'moment', name: 'torque', sample: [0, 1e5] },
  },
  output: { symbol: 'P_eq', kind: 'gauge pressure', name: 'equivalent pressure' },
  sources: [
    { key: 'iso-24817', locator: '7.5, as recalled' },
    { key: 'asme-pcc-2', locator: '401-3.4, as recalled' },
  ],
  evidence: {
    form: { tag: 'recalled', note: 'below P_q chosen: the least that the recalled form gives at any pressure' },
    'factor 16': { tag: 'recalled', note: 'to be confirmed' },
  },
  limits: [],
});

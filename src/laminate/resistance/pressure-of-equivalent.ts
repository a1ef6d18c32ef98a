import { finite, formula, nonNegative, positive, refuse } from '../../formula/index.js';
import type { Force, GaugePressure, Length, Moment } from '../../quantity/index.js';

export interface PressureOfEquivalentInput {
  readonly equivalentPressure: GaugePressure;
  readonly outsideDiameter: Length;
  readonly shearForce: Force;
  readonly torque: Moment;
}

/**
 * Internal pressure that makes up an equivalent pressure together with a shear force and a torque: the inverse of
 * `equivalentPressure`.
 *
 * $$P = \frac{P_{eq} + \sqrt{P_{eq}^2 - 4 P_q^2}}{2}, \qquad P_q = \frac{4 (F_{sh} + 2 M_{to} / D)}{\pi D^2}$$
 *
 * @param input.equivalentPressure P_eq, that the laminate holds [Pa], >= 2 P_q
 * @param input.outsideDiameter    D [m], > 0
 * @param input.shearForce         F_sh, size of the shear force [N], >= 0
 * @param input.torque             M_to, size of the torque [N m], >= 0
 * @returns pressure [Pa]
 * @throws CalculationError `invalid-input`; `no-solution` when shear and torque alone ask for more than P_eq
 */
export function pressureOfEquivalent(input: PressureOfEquivalentInput): GaugePressure {
  const { equivalentPressure: H, outsideDiameter: D, shearForce: F, torque: M } = input;
  nonNegative(H, 'equivalentPressure', 'Pa');
  positive(D, 'outsideDiameter', 'm');
  nonNegative(F, 'shearForce', 'N');
  nonNegative(M, 'torque', 'N m');
  const Pq = (4 * (F + (2 * M) / D)) / (Math.PI * D * D);
  finite(Pq, 'pressure of the shear', 'Pa');
  if (H < 2 * Pq) {
    refuse({
      code: 'no-solution',
      parameter: 'equivalentPressure',
      value: H,
      unit: 'Pa',
      constraint: 'must be at least {limit}, which shear force and torque ask for without any pressure',
      limit: 2 * Pq,
    });
  }
  const pressure = (H + Math.sqrt((H - 2 * Pq) * (H + 2 * Pq))) / 2;
  finite(pressure, 'pressure', 'Pa');
  return pressure as GaugePressure;
}

export const pressureOfEquivalentFormula = /* @__PURE__ */ formula<PressureOfEquivalentInput, GaugePressure>({
  id: 'laminate/pressure-of-equivalent',
  title: 'Pressure left beside shear force and torque',
  compute: pressureOfEquivalent,
  equation: {
    where: [{ symbol: 'P_q', kind: 'gauge pressure', expression: '4 * (F_sh + 2 * M_to / D) / (pi * D^2)' }],
    expression: '(P_eq + sqrt((P_eq - 2 * P_q) * (P_eq + 2 * P_q))) / 2',
  },
  inputs: {
    equivalentPressure: { symbol: 'P_eq', kind: 'gauge pressure', name: 'equivalent pressure', sample: [2e6, 20e6] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.2, 1.2], usual: [0.02, 1.5] },
    shearForce: { symbol: 'F_sh', kind: 'force', name: 'shear force', sample: [0, 1e4], usual: [0, 5e6] },
    torque: { symbol: 'M_to', kind: 'moment', name: 'torque', sample: [0, 1e3], usual: [0, 1e6] },
  },
  output: { symbol: 'P', kind: 'gauge pressure', name: 'pressure' },
  sources: [
    { key: 'iso-24817', locator: '7.5, as recalled' },
    { key: 'asme-pcc-2', locator: '401-3.4, as recalled' },
  ],
  evidence: { form: { tag: 'recalled', note: 'inverse of the equivalent pressure' } },
  limits: [],
});

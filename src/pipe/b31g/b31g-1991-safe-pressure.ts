import { formula, nonNegative, positive } from '../../formula/index.js';
import type { GaugePressure, Length } from '../../quantity/index.js';
import { checkDepth } from '../remaining-strength/part-wall-defect.js';

export interface B31g1991SafePressureInput {
  readonly designPressure: GaugePressure;
  readonly wallThickness: Length;
  readonly defectDepth: Length;
  readonly lengthFactor: number;
}

/**
 * Safe pressure P' of the 1991 manual for a pipe with one axial metal loss.
 *
 * $$P' = \min\left(1.1 P\,\frac{1 - \frac{2}{3}x}{1 - \frac{2}{3}x/\sqrt{A^2 + 1}},\ P\right)\quad(A \le 4),\qquad
 * P' = \min\left(1.1 P (1 - x),\ P\right)\quad(A > 4)$$
 *
 * @param input.designPressure  P, of `b31g1991DesignPressure` [Pa], >= 0
 * @param input.wallThickness   t [m], > 0
 * @param input.defectDepth     d, deepest point [m], >= 0 and at most 0.8 t
 * @param input.lengthFactor    A, of `b31g1991LengthFactor`, >= 0
 * @returns safe pressure [Pa], never above P
 * @throws CalculationError `invalid-input`; `outside-validity` for a depth over 0.8 of the wall
 * @remarks The factor of safety of the sound pipe, 1/F on yield, is kept. P and A are inputs as in the manual's own program,
 *   whose listing rounds P to whole psi and cuts A to three decimals before it goes on.
 * @see ASME B31G-1991, Part 4
 */
export function b31g1991SafePressure(input: B31g1991SafePressureInput): GaugePressure {
  const { designPressure: P, wallThickness: t, defectDepth: d, lengthFactor: A } = input;
  nonNegative(P, 'designPressure', 'Pa');
  positive(t, 'wallThickness', 'm');
  checkDepth(d, t, 0.8, 'defectDepth', 'ASME B31G-1991');
  nonNegative(A, 'lengthFactor', '');
  const x = d / t;
  const loss = (2 * x) / 3;
  const share = A > 4 ? 1 - x : (1 - loss) / (1 - loss / Math.sqrt(A * A + 1));
  return (P * Math.min(1.1 * share, 1)) as GaugePressure;
}

/** Whether the loss is below a tenth of the wall, where the manual asks for no action. */
export function b31g1991SafePressureShallow(input: B31g1991SafePressureInput): boolean {
  return input.defectDepth < 0.1 * input.wallThickness;
}

export const b31g1991SafePressureFormula = /* @__PURE__ */ formula<B31g1991SafePressureInput, GaugePressure>({
  id: 'pipe/b31g-1991-safe-pressure',
  title: 'Safe pressure of B31G-1991',
  search: ['corrosion', 'metal loss', 'maop', 'remaining strength'],
  compute: b31g1991SafePressure,
  equation: {
    where: [{ symbol: 'x', kind: 'number', expression: 'd / t' }],
    branches: [
      { when: 'A <= 4', expression: 'min(1.1 * P * (1 - 2/3 * x) / (1 - 2/3 * x / sqrt(A^2 + 1)), P)' },
      { expression: 'min(1.1 * P * (1 - x), P)' },
    ],
  },
  inputs: {
    designPressure: {
      symbol: 'P',
      kind: 'gauge pressure',
      name: 'pressure of the sound pipe',
      sample: [1e6, 15e6],
      usual: [2e4, 3e7],
    },
    wallThickness: { symbol: 't', kind: 'length', name: 'wall thickness', sample: [0.005, 0.03] },
    defectDepth: { symbol: 'd', kind: 'length', name: 'depth of the defect', sample: [0.0005, 0.015] },
    lengthFactor: { symbol: 'A', kind: 'number', name: 'length factor', sample: [0, 8] },
  },
  output: { symbol: 'P_safe', kind: 'gauge pressure', name: 'safe pressure' },
  sources: [{ key: 'asme-b31g-1991', locator: 'Part 4' }],
  evidence: { form: { tag: 'secondary' } },
  limits: [
    {
      sort: 'stop',
      text: 'Depth over 0.8 of the wall: repair or replace.',
      source: { key: 'asme-b31g-1991', locator: 'Part 4' },
    },
    {
      sort: 'note',
      text: 'Depth below 0.1 of the wall: the manual asks for no action.',
      beyond: b31g1991SafePressureShallow,
      source: { key: 'asme-b31g-1991', locator: 'Part 4' },
    },
  ],
});

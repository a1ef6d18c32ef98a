import { atMost, finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { GaugePressure, Length } from '../../quantity/index.js';

export interface B31g1991AllowableDepthInput {
  readonly designPressure: GaugePressure;
  readonly operatingPressure: GaugePressure;
  readonly wallThickness: Length;
  readonly lengthFactor: number;
}

/**
 * Deepest metal loss of a given length that may stay at the operating pressure, by the 1991 manual: the depth at which
 * its safe pressure falls to the operating pressure, and at most 0.8 of the wall.
 *
 * $$d = t\,\min\left(\tfrac{3}{2}\,\frac{k - 1}{k - 1/\sqrt{A^2+1}},\ 0.8\right)\quad(A \le 4),\qquad
 * d = t\,\min\left(1 - \tfrac{1}{k},\ 0.8\right)\quad(A > 4),\qquad k = \frac{1.1 P}{\mathrm{MAOP}}$$
 *
 * @param input.designPressure     P, of `b31g1991DesignPressure` [Pa], > 0
 * @param input.operatingPressure  MAOP [Pa], > 0 and at most P
 * @param input.wallThickness      t [m], > 0
 * @param input.lengthFactor       A, of `b31g1991LengthFactor`, >= 0
 * @returns allowable depth [m]
 * @throws CalculationError `invalid-input`
 * @see ASME B31G-1991, Part 4
 */
export function b31g1991AllowableDepth(input: B31g1991AllowableDepthInput): Length {
  const { designPressure: P, operatingPressure: MAOP, wallThickness: t, lengthFactor: A } = input;
  positive(P, 'designPressure', 'Pa');
  positive(MAOP, 'operatingPressure', 'Pa');
  atMost(MAOP, P, 'the pressure of the sound pipe', 'operatingPressure', 'Pa');
  positive(t, 'wallThickness', 'm');
  nonNegative(A, 'lengthFactor', '');
  const k = 1.1 * (P / MAOP);
  finite(k, 'designPressure over operatingPressure', '');
  const x = A > 4 ? 1 - 1 / k : (1.5 * (k - 1)) / (k - 1 / Math.sqrt(A * A + 1));
  return (t * Math.min(x, 0.8)) as Length;
}

export const b31g1991AllowableDepthFormula = /* @__PURE__ */ formula<B31g1991AllowableDepthInput, Length>({
  id: 'pipe/b31g-1991-allowable-depth',
  title: 'Allowable depth of B31G-1991',
  search: ['corrosion', 'metal loss', 'pit depth'],
  compute: b31g1991AllowableDepth,
  equation: {
    where: [{ symbol: 'k', kind: 'number', expression: '1.1 * P / MAOP' }],
    branches: [
      { when: 'A <= 4', expression: 't * min(3/2 * (k - 1) / (k - 1 / sqrt(A^2 + 1)), 0.8)' },
      { expression: 't * min(1 - 1 / k, 0.8)' },
    ],
  },
  inputs: {
    designPressure: { symbol: 'P', kind: 'gauge pressure', name: 'pressure of the sound pipe', sample: [4e6, 15e6] },
    operatingPressure: {
      symbol: 'MAOP',
      kind: 'gauge pressure',
      name: 'maximum operating pressure',
      sample: [1e6, 12e6],
    },
    wallThickness: { symbol: 't', kind: 'length', name: 'wall thickness', sample: [0.005, 0.03] },
    lengthFactor: { symbol: 'A', kind: 'number', name: 'length factor', sample: [0, 8] },
  },
  output: { symbol: 'd_max', kind: 'length', name: 'allowable depth' },
  sources: [{ key: 'asme-b31g-1991', locator: 'Part 4, solved for the depth' }],
  evidence: { form: { tag: 'secondary', derived: 'safe pressure searched over the depth' } },
  limits: [],
});

import { atLeast, finite, formula, nonNegative } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';

export interface ThicknessOnFittingInput {
  readonly thickness: Length;
  readonly stressFactor?: number;
}

/**
 * Laminate thickness on a fitting from that on straight pipe.
 *
 * $$t_c = t\,k_s$$
 *
 * @param input.thickness     t, on straight pipe by every line that applies [m], >= 0
 * @param input.stressFactor  k_s, of the fitting, >= 1; 1 unless given
 * @returns thickness [m]
 * @throws CalculationError `invalid-input`
 * @see ISO 24817:2017, component factors, as recalled
 */
export function thicknessOnFitting(input: ThicknessOnFittingInput): Length {
  const { thickness: t, stressFactor: ks = 1 } = input;
  nonNegative(t, 'thickness', 'm');
  atLeast(ks, 1, 'that of straight pipe', 'stressFactor', '');
  const thickness = t * ks;
  finite(thickness, 'thickness', 'm');
  return thickness as Length;
}

export const thicknessOnFittingFormula = /* @__PURE__ */ formula<ThicknessOnFittingInput, Length>({
  id: 'laminate/thickness-on-fitting',
  title: 'Thickness on a fitting',
  search: ['elbow', 'tee', 'flange', 'bend'],
  compute: thicknessOnFitting,
  equation: { expression: 't * k_s' },
  inputs: {
    thickness: { symbol: 't', kind: 'length', name: 'thickness on straight pipe', sample: [0.001, 0.03] },
    stressFactor: { symbol: 'k_s', kind: 'number', name: 'factor of the fitting', default: 1, sample: [1, 2] },
  },
  output: { symbol: 't_c', kind: 'length', name: 'thickness on the fitting' },
  sources: [{ key: 'iso-24817', locator: 'component factors' }],
  evidence: { form: { tag: 'recalled' } },
  limits: [],
});

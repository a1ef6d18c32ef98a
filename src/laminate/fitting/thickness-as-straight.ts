import { finite, formula, nonNegative, positive, refuse } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';

export interface ThicknessAsStraightInput {
  readonly thickness: Length;
  readonly stressFactor?: number;
}

/**
 * What a laminate on a fitting is worth on straight pipe: `thicknessOnFitting` read backwards.
 *
 * $$t = \frac{t_c}{k_s}$$
 *
 * @param input.thickness     t_c, as laid [m], >= 0
 * @param input.stressFactor  k_s, of the fitting, >= 1; 1 unless given
 * @returns thickness that counts by the lines of straight pipe [m]
 * @throws CalculationError `invalid-input`
 * @see ISO 24817:2017, component factors, as recalled
 */
export function thicknessAsStraight(input: ThicknessAsStraightInput): Length {
  const { thickness: t, stressFactor: ks = 1 } = input;
  nonNegative(t, 'thickness', 'm');
  positive(ks, 'stressFactor', '');
  if (ks < 1) {
    refuse({
      code: 'invalid-input',
      parameter: 'stressFactor',
      value: ks,
      unit: '',
      constraint: 'must be at least 1: a laminate on a fitting is never worth more than on straight pipe',
    });
  }
  const thickness = t / ks;
  finite(thickness, 'thickness', 'm');
  return thickness as Length;
}

export const thicknessAsStraightFormula = /* @__PURE__ */ formula<ThicknessAsStraightInput, Length>({
  id: 'laminate/thickness-as-straight',
  title: 'What a thickness on a fitting is worth on straight pipe',
  compute: thicknessAsStraight,
  equation: { expression: 't_c / k_s' },
  inputs: {
    thickness: { symbol: 't_c', kind: 'length', name: 'thickness on the fitting', sample: [0.001, 0.03] },
    stressFactor: { symbol: 'k_s', kind: 'number', name: 'factor of the fitting', default: 1, sample: [1, 2] },
  },
  output: { symbol: 't', kind: 'length', name: 'thickness that counts' },
  sources: [{ key: 'iso-24817', locator: 'component factors' }],
  evidence: { form: { tag: 'recalled' } },
  limits: [],
});

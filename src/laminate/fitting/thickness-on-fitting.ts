import { finite, formula, nonNegative, positive, refuse } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';

export interface ThicknessOnFittingInput {
  readonly thickness: Length;
  readonly stressFactor?: number;
  readonly overlayFactor?: number;
}

/**
 * Laminate thickness on a fitting, or where its overlap is short, from that on straight pipe.
 *
 * $$t_c = t\,k_s\,k_o$$
 *
 * @param input.thickness      t, on straight pipe by every line that applies [m], >= 0
 * @param input.stressFactor   k_s, of the fitting, >= 1; 1 unless given
 * @param input.overlayFactor  k_o, of `overlayFactor`, >= 1; 1 unless given
 * @returns thickness [m]
 * @throws CalculationError `invalid-input`
 * @see ISO 24817:2017, component factors, as recalled
 */
export function thicknessOnFitting(input: ThicknessOnFittingInput): Length {
  const { thickness: t, stressFactor: ks = 1, overlayFactor: ko = 1 } = input;
  nonNegative(t, 'thickness', 'm');
  leastOne(ks, 'stressFactor');
  leastOne(ko, 'overlayFactor');
  const thickness = t * ks * ko;
  finite(thickness, 'thickness', 'm');
  return thickness as Length;
}

function leastOne(factor: number, parameter: string): void {
  positive(factor, parameter, '');
  if (factor >= 1) return;
  refuse({
    code: 'invalid-input',
    parameter,
    value: factor,
    unit: '',
    constraint: 'must be at least 1: a fitting never asks for less than straight pipe',
  });
}

export const thicknessOnFittingFormula = /* @__PURE__ */ formula<ThicknessOnFittingInput, Length>({
  id: 'laminate/thickness-on-fitting',
  title: 'Thickness on a fitting',
  compute: thicknessOnFitting,
  equation: { expression: 't * k_s * k_o' },
  inputs: {
    thickness: { symbol: 't', kind: 'length', name: 'thickness on straight pipe', sample: [0.001, 0.03] },
    stressFactor: { symbol: 'k_s', kind: 'number', name: 'factor of the fitting', default: 1, sample: [1, 2] },
    overlayFactor: { symbol: 'k_o', kind: 'number', name: 'factor of a short overlap', default: 1, sample: [1, 3] },
  },
  output: { symbol: 't_c', kind: 'length', name: 'thickness on the fitting' },
  sources: [{ key: 'iso-24817', locator: 'component factors' }],
  evidence: { form: { tag: 'recalled' } },
  limits: [],
});

import { atMost, finite, formula, positive } from '../../formula/index.js';
import type { ArealWeight, Ratio } from '../../quantity/index.js';

export interface ArealResinInput {
  readonly arealWeight: ArealWeight;
  readonly fibreMassFraction: Ratio;
}

/**
 * Mass of resin per area that one ply of fabric takes at a fibre mass fraction.
 *
 * $$W_m = W_f \frac{1 - w_f}{w_f}$$
 *
 * @param input.arealWeight W_f, mass of dry fabric per area of one ply [kg/m2], > 0
 * @param input.fibreMassFraction w_f, mass of fibre in the mass of the laminate [1], above 0, at most 1
 * @returns resin per area of one ply [kg/m2]
 * @throws CalculationError `invalid-input`
 * @remarks Hand lay-up of cloth holds 0.45 to 0.60 of fibre by mass, mat 0.25 to 0.35.
 * @see worked examples of mixing on public web pages
 */
export function arealResin(input: ArealResinInput): ArealWeight {
  const { arealWeight: Wf, fibreMassFraction: wF } = input;
  positive(Wf, 'arealWeight', 'kg/m2');
  positive(wF, 'fibreMassFraction', '');
  atMost(wF, 1, 'the whole', 'fibreMassFraction', '');
  const W = (Wf * (1 - wF)) / wF;
  finite(W, 'arealResin', 'kg/m2');
  return W as ArealWeight;
}

export const arealResinFormula = /* @__PURE__ */ formula<ArealResinInput, ArealWeight>({
  id: 'resin/areal-resin',
  title: 'Resin per area of one ply',
  search: ['wet out', 'resin uptake'],
  compute: arealResin,
  equation: { expression: 'W_f * (1 - w_f) / w_f' },
  inputs: {
    arealWeight: {
      symbol: 'W_f',
      kind: 'areal weight',
      name: 'mass of dry fabric per area of one ply',
      sample: [0.1, 1.5],
    },
    fibreMassFraction: {
      symbol: 'w_f',
      kind: 'ratio',
      name: 'mass of fibre in the mass of the laminate',
      sample: [0.2, 0.85],
    },
  },
  output: { symbol: 'W_m', kind: 'areal weight', name: 'resin per area of one ply' },
  sources: [{ key: 'web-mixing-examples', locator: 'resin for a fibre mass fraction of 0.30' }],
  evidence: { form: { tag: 'secondary', derived: 'mass balance' } },
  limits: [],
});

import { finite, formula, positive, within } from '../../formula/index.js';
import type { Length, Ratio } from '../../quantity/index.js';

export interface WrinkleLimitInput {
  readonly laminateThickness: Length;
  readonly ceiling?: Length | undefined;
  readonly share?: Ratio | undefined;
}

/**
 * The highest step in thickness that a wrinkle may leave.
 *
 * $$h = \min(h_c, \kappa t)$$
 *
 * @param input.laminateThickness t, thickness of the laminate [m], > 0
 * @param input.ceiling           h_c, limit for any thickness [m], > 0; 0.0025 when not given
 * @param input.share             kappa, limit as a part of the thickness, above 0 and at most 1; 0.2 when not given
 * @returns highest step [m]
 * @throws CalculationError `invalid-input`
 * @see ISO 24817 and ASME PCC-2, tables of limits, as recalled: one recollection has the share, the others only the ceiling
 */
export function wrinkleLimit(input: WrinkleLimitInput): Length {
  const { laminateThickness: t, ceiling: hC = 0.0025 as Length, share: kappa = 0.2 as Ratio } = input;
  positive(t, 'laminateThickness', 'm');
  positive(hC, 'ceiling', 'm');
  positive(kappa, 'share', '');
  within(kappa, 0, 1, 'share', '');
  const h = Math.min(hC, kappa * t);
  finite(h, 'wrinkle limit', 'm');
  return h as Length;
}

export const wrinkleLimitFormula = /* @__PURE__ */ formula<WrinkleLimitInput, Length>({
  id: 'acceptance/wrinkle-limit',
  title: 'Highest wrinkle',
  search: ['crease', 'wave', 'defect in the wrap'],
  compute: wrinkleLimit,
  equation: { expression: 'min(h_c, kappa * t)' },
  inputs: {
    laminateThickness: { symbol: 't', kind: 'length', name: 'thickness of the laminate', sample: [0.001, 0.04] },
    ceiling: {
      symbol: 'h_c',
      kind: 'length',
      name: 'limit for any thickness',
      sample: [0.001, 0.005],
      default: 0.0025,
    },
    share: {
      symbol: 'kappa',
      kind: 'ratio',
      name: 'limit as a part of the thickness',
      sample: [0.1, 0.5],
      default: 0.2,
    },
  },
  output: { symbol: 'h', kind: 'length', name: 'highest step' },
  sources: [
    { key: 'iso-24817', locator: 'table of defect limits' },
    { key: 'asme-pcc-2', locator: 'table 401-5.2' },
  ],
  evidence: {
    form: { tag: 'recalled', note: 'the lesser of two recollections' },
    ceiling: { tag: 'recalled' },
    share: { tag: 'recalled', note: 'weak memory' },
  },
  limits: [],
});

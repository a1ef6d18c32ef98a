import { finite, formula, positive } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';

export interface OverlayFactorInput {
  readonly requiredOverlap: Length;
  readonly availableOverlap: Length;
  readonly exponent?: number;
}

/**
 * How much thicker a laminate is where the overlap that it asks for does not fit; 1 where it does.
 *
 * $$k = \max\left(1,\ \frac{l_{req}}{l}\right)^m$$
 *
 * @param input.requiredOverlap   l_req [m], > 0
 * @param input.availableOverlap  l [m], > 0
 * @param input.exponent          m of the rule set, > 0; 2/3 unless given
 * @returns factor on the thickness, at least 1
 * @throws CalculationError `invalid-input`
 * @remarks The rule of `thicknessAtShortOverlap`, read forwards. It says nothing of the bond, which has to pass the force of
 *   the laminate on the overlap that is left.
 * @see ISO 24817:2017 and ASME PCC-2, component factors, as recalled
 */
export function overlayFactor(input: OverlayFactorInput): number {
  const { requiredOverlap, availableOverlap, exponent: m = 2 / 3 } = input;
  positive(requiredOverlap, 'requiredOverlap', 'm');
  positive(availableOverlap, 'availableOverlap', 'm');
  positive(m, 'exponent', '');
  const factor = Math.max(1, requiredOverlap / availableOverlap) ** m;
  finite(factor, 'factor', '');
  return factor;
}

export const overlayFactorFormula = /* @__PURE__ */ formula<OverlayFactorInput, number>({
  id: 'laminate/overlay-factor',
  title: 'Thickness where the overlap is short',
  compute: overlayFactor,
  equation: { expression: 'max(1, l_req / l)^m' },
  inputs: {
    requiredOverlap: { symbol: 'l_req', kind: 'length', name: 'required overlap', sample: [0.05, 0.4] },
    availableOverlap: { symbol: 'l', kind: 'length', name: 'overlap that fits', sample: [0.02, 0.4] },
    exponent: {
      symbol: 'm',
      kind: 'number',
      name: 'exponent of the rule set',
      sample: [0.5, 1],
      default: 0.6666666666666666,
    },
  },
  output: { symbol: 'k', kind: 'number', name: 'factor on the thickness' },
  sources: [
    { key: 'iso-24817', locator: 'component factors' },
    { key: 'asme-pcc-2', locator: 'component factors' },
  ],
  evidence: { form: { tag: 'recalled' }, exponent: { tag: 'recalled' } },
  limits: [],
});

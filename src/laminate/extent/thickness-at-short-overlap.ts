import { formula, nonNegative, positive } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';

export interface ThicknessAtShortOverlapInput {
  readonly thickness: Length;
  readonly overlap: Length;
  readonly requiredOverlap: Length;
  readonly exponent?: number;
}

/**
 * Thickness that counts where the overlap is shorter than required; all of it where the overlap is long enough.
 *
 * $$t_c = t\left(\min\left(1,\ \frac{l}{l_{req}}\right)\right)^m$$
 *
 * @param input.thickness        t, as laid [m], >= 0
 * @param input.overlap          l, as laid [m], >= 0
 * @param input.requiredOverlap  l_req [m], > 0
 * @param input.exponent         m of the rule set, > 0; 2/3 unless given
 * @returns thickness that counts [m]
 * @throws CalculationError `invalid-input`
 * @remarks The rule sets make a laminate thicker where its overlap does not fit; this reads the same rule backwards.
 * @see ISO 24817:2017 and ASME PCC-2, component factors, as recalled
 */
export function thicknessAtShortOverlap(input: ThicknessAtShortOverlapInput): Length {
  const { thickness: t, overlap: l, requiredOverlap, exponent: m = 2 / 3 } = input;
  nonNegative(t, 'thickness', 'm');
  nonNegative(l, 'overlap', 'm');
  positive(requiredOverlap, 'requiredOverlap', 'm');
  positive(m, 'exponent', '');
  return (t * Math.min(1, l / requiredOverlap) ** m) as Length;
}

export const thicknessAtShortOverlapFormula = /* @__PURE__ */ formula<ThicknessAtShortOverlapInput, Length>({
  id: 'laminate/thickness-at-short-overlap',
  title: 'Thickness that counts at a short overlap',
  compute: thicknessAtShortOverlap,
  equation: { expression: 't * min(1, l / l_req)^m' },
  inputs: {
    thickness: { symbol: 't', kind: 'length', name: 'thickness laid', sample: [0.001, 0.03] },
    overlap: { symbol: 'l', kind: 'length', name: 'overlap laid', sample: [0.02, 0.4] },
    requiredOverlap: { symbol: 'l_req', kind: 'length', name: 'required overlap', sample: [0.05, 0.4] },
    exponent: {
      symbol: 'm',
      kind: 'number',
      name: 'exponent of the rule set',
      sample: [0.5, 1],
      default: 0.6666666666666666,
    },
  },
  output: { symbol: 't_c', kind: 'length', name: 'thickness that counts' },
  sources: [
    { key: 'iso-24817', locator: 'component factors' },
    { key: 'asme-pcc-2', locator: 'component factors' },
  ],
  evidence: { form: { tag: 'recalled' }, exponent: { tag: 'recalled' } },
  limits: [],
});

import { finite, formula, nonNegative, positive, refuse } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';

export interface TaperLengthInput {
  readonly laminateThickness: Length;
  readonly ratio?: number;
  readonly leastRatio?: number;
}

/**
 * Length over which the end of the laminate tapers out.
 *
 * $$l_t = r t$$
 *
 * @param input.laminateThickness  t [m], >= 0
 * @param input.ratio              r, length over thickness, 5 unless given
 * @param input.leastRatio         steepest taper allowed, 5 unless given
 * @returns taper length of one end [m]
 * @throws CalculationError `invalid-input`; `outside-validity` for a steeper taper
 * @see ISO 24817:2017, 7.5.8; ASME PCC-2, 401-3.4, as recalled
 */
export function taperLength(input: TaperLengthInput): Length {
  const { laminateThickness: t, ratio: r = 5, leastRatio = 5 } = input;
  nonNegative(t, 'laminateThickness', 'm');
  positive(r, 'ratio', '');
  positive(leastRatio, 'leastRatio', '');
  if (r < leastRatio) {
    refuse({
      code: 'outside-validity',
      parameter: 'ratio',
      value: r,
      unit: '',
      constraint: `must be at least ${leastRatio}: a steeper end peels`,
      source: 'after ISO 24817:2017, 7.5.8, as recalled',
    });
  }
  const l = r * t;
  finite(l, 'taper length', 'm');
  return l as Length;
}

export const taperLengthFormula = /* @__PURE__ */ formula<TaperLengthInput, Length>({
  id: 'laminate/taper-length',
  title: 'Taper length',
  search: ['chamfer', 'end taper', 'feather'],
  compute: taperLength,
  equation: { expression: 'r * t' },
  inputs: {
    laminateThickness: { symbol: 't', kind: 'length', name: 'laminate thickness', sample: [0, 0.05] },
    ratio: { symbol: 'r', kind: 'number', name: 'length over thickness', default: 5, sample: [5, 12] },
    leastRatio: { symbol: 'r_min', kind: 'number', name: 'steepest taper', default: 5, sample: [3, 6] },
  },
  output: { symbol: 'l_taper', kind: 'length', name: 'taper length' },
  sources: [
    { key: 'iso-24817', locator: '7.5.8, as recalled' },
    { key: 'asme-pcc-2', locator: '401-3.4, as recalled' },
  ],
  evidence: { form: { tag: 'recalled' }, ratio: { tag: 'recalled' }, leastRatio: { tag: 'recalled' } },
  limits: [{ sort: 'stop', text: 'the taper must not be steeper than 5 to 1' }],
});

import { finite, formula, positive } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';

export interface ThinLaminateLimitInput {
  readonly outsideDiameter: Length;
  readonly ratio?: number;
}

/**
 * Thickness from which a laminate no longer counts as thin, so that the equations of mean stress err by too much.
 *
 * $$t_{thin} = \frac{D}{r}$$
 *
 * @param input.outsideDiameter  D [m], > 0
 * @param input.ratio            r, 12 unless given, > 0
 * @returns thickness at the limit [m]
 * @throws CalculationError `invalid-input`
 * @remarks At D/12 the mean stress lies 9 % below the stress at the bore of the laminate; see `laminateBoreRatio`.
 * @see ISO 24817:2017, thin laminates, as recalled
 */
export function thinLaminateLimit(input: ThinLaminateLimitInput): Length {
  const { outsideDiameter: D, ratio: r = 12 } = input;
  positive(D, 'outsideDiameter', 'm');
  positive(r, 'ratio', '');
  const t = D / r;
  finite(t, 'thin limit', 'm');
  return t as Length;
}

/**
 * Whether a laminate is as thick as the thin limit, or thicker.
 *
 * @param input as for the limit, with the thickness that is held against it
 */
export function thinLaminateLimitExceeded(
  input: ThinLaminateLimitInput & { readonly laminateThickness: Length },
): boolean {
  return input.laminateThickness >= input.outsideDiameter / (input.ratio ?? 12);
}

export const thinLaminateLimitFormula = /* @__PURE__ */ formula<ThinLaminateLimitInput, Length>({
  id: 'laminate/thin-laminate-limit',
  title: 'Thickness up to which a laminate is thin',
  compute: thinLaminateLimit,
  equation: { expression: 'D / r' },
  inputs: {
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.0213, 1.2] },
    ratio: { symbol: 'r', kind: 'number', name: 'diameter over thickness at the limit', default: 12, sample: [6, 20] },
  },
  output: { symbol: 't_thin', kind: 'length', name: 'thin limit' },
  sources: [{ key: 'iso-24817', locator: 'thin laminates, as recalled' }],
  evidence: { form: { tag: 'recalled' }, ratio: { tag: 'recalled', note: '6 in one recollection' } },
  limits: [],
});

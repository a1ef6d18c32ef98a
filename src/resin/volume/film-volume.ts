import { formula, positive } from '../../formula/index.js';
import type { Area, Length, Volume } from '../../quantity/index.js';

export interface FilmVolumeInput {
  readonly area: Area;
  readonly thickness: Length;
}

/**
 * Volume of a film of resin, primer or adhesive on an area.
 *
 * $$V = A t$$
 *
 * @param input.area A, area covered [m2], > 0
 * @param input.thickness t, thickness of the film [m], > 0
 * @returns volume [m3]
 * @throws CalculationError `invalid-input`
 * @see worked examples of mixing on public web pages
 */
export function filmVolume(input: FilmVolumeInput): Volume {
  const { area: A, thickness: t } = input;
  positive(A, 'area', 'm2');
  positive(t, 'thickness', 'm');
  const V = A * t;
  positive(V, 'filmVolume', 'm3');
  return V as Volume;
}

export const filmVolumeFormula = /* @__PURE__ */ formula<FilmVolumeInput, Volume>({
  id: 'resin/film-volume',
  title: 'Volume of a film',
  search: ['primer', 'coat thickness', 'wet film'],
  compute: filmVolume,
  equation: { expression: 'A * t' },
  inputs: {
    area: { symbol: 'A', kind: 'area', name: 'area covered', sample: [0.01, 20] },
    thickness: { symbol: 't', kind: 'length', name: 'thickness of the film', sample: [5e-5, 0.003] },
  },
  output: { symbol: 'V', kind: 'volume', name: 'volume of the film' },
  sources: [{ key: 'web-mixing-examples', locator: 'film of 0.010 in' }],
  evidence: { form: { tag: 'secondary' } },
  limits: [],
});

import { formula, oneOf, positive } from '../../formula/index.js';
import type { Length, Volume } from '../../quantity/index.js';

/** Flat-bottomed takes the greatest depth everywhere; bowl is half an ellipsoid. */
export type DefectShape = 'flat-bottomed' | 'bowl';

export interface DefectVolumeInput {
  readonly length: Length;
  readonly width: Length;
  readonly depth: Length;
  readonly shape: DefectShape;
}

/**
 * Volume of metal lost in a defect, from its three greatest measures: what the filler must fill before it builds up.
 *
 * @param input.length l, length along the pipe [m], > 0
 * @param input.width b, width round the pipe [m], > 0
 * @param input.depth d, greatest depth [m], > 0
 * @param input.shape shape, shape of the pit, `flat-bottomed` (never too little) or `bowl` (half an ellipsoid)
 * @returns volume of the defect [m3]
 * @throws CalculationError `invalid-input`
 * @remarks Flat-bottomed is the upper bound for any defect inside these measures.
 */
export function defectVolume(input: DefectVolumeInput): Volume {
  const { length: l, width: b, depth: d, shape } = input;
  positive(l, 'length', 'm');
  positive(b, 'width', 'm');
  positive(d, 'depth', 'm');
  oneOf(shape, ['flat-bottomed', 'bowl'], 'shape');
  const box = l * b * d;
  const V = shape === 'bowl' ? (Math.PI / 6) * box : box;
  positive(V, 'defectVolume', 'm3');
  return V as Volume;
}

export const defectVolumeFormula = /* @__PURE__ */ formula<DefectVolumeInput, Volume>({
  id: 'resin/defect-volume',
  title: 'Volume of a metal-loss defect',
  search: ['putty', 'pit filling', 'filler'],
  compute: defectVolume,
  equation: {
    branches: [{ when: 'shape == "bowl"', expression: 'pi / 6 * (l * b * d)' }, { expression: 'l * b * d' }],
  },
  inputs: {
    length: { symbol: 'l', kind: 'length', name: 'length along the pipe', sample: [0.005, 0.3] },
    width: { symbol: 'b', kind: 'length', name: 'width round the pipe', sample: [0.005, 0.2] },
    depth: { symbol: 'd', kind: 'length', name: 'greatest depth', sample: [0.001, 0.02] },
    shape: { symbol: 'shape', kind: 'choice', name: 'shape of the pit', choices: ['flat-bottomed', 'bowl'] },
  },
  output: { symbol: 'V_d', kind: 'volume', name: 'volume of the defect' },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'quadrature of the depth over the defect' } },
  limits: [],
});

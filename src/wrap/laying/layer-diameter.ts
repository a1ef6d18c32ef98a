import { finite, formula, nonNegative, positive, wholeNumber } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';

export interface LayerDiameterInput {
  readonly outsideDiameter: Length;
  readonly layerThickness: Length;
  readonly layer: number;
}

/**
 * Mean diameter of one layer of a wrap: that of its own middle.
 *
 * $$D_k = D_0 + (2k - 1)\,t$$
 *
 * @param input.outsideDiameter D_0, diameter of the surface that the first layer is laid on [m], > 0
 * @param input.layerThickness t, thickness of one layer [m], >= 0
 * @param input.layer k, number of the layer, whole, 1 or above
 * @returns mean diameter of the layer [m]
 * @throws CalculationError `invalid-input`
 */
export function layerDiameter(input: LayerDiameterInput): Length {
  const { outsideDiameter: D0, layerThickness: t, layer: k } = input;
  positive(D0, 'outsideDiameter', 'm');
  nonNegative(t, 'layerThickness', 'm');
  wholeNumber(k, 1, 'layer');
  const D = D0 + (2 * k - 1) * t;
  finite(D, 'layer diameter', 'm');
  return D as Length;
}

export const layerDiameterFormula = /* @__PURE__ */ formula<LayerDiameterInput, Length>({
  id: 'wrap/layer-diameter',
  title: 'Mean diameter of a layer of the wrap',
  search: ['wrap diameter'],
  compute: layerDiameter,
  equation: { expression: 'D_0 + (2 * k - 1) * t' },
  inputs: {
    outsideDiameter: {
      symbol: 'D_0',
      kind: 'length',
      name: 'diameter of the surface that the first layer is laid on',
      sample: [0.06, 1.2],
    },
    layerThickness: { symbol: 't', kind: 'length', name: 'thickness of one layer', sample: [0.0002, 0.002] },
    layer: { symbol: 'k', kind: 'count', name: 'number of the layer', sample: [1, 40] },
  },
  output: { symbol: 'D_k', kind: 'length', name: 'mean diameter of the layer' },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'layers stacked one on another' } },
  limits: [],
});

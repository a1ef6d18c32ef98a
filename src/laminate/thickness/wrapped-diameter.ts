import { finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';

export interface WrappedDiameterInput {
  readonly outsideDiameter: Length;
  readonly fillerThickness: Length;
}

/**
 * Diameter that the laminate goes round over the defect: the pipe with its filler.
 *
 * $$D_w = D + 2 t_f$$
 *
 * @param input.outsideDiameter  D, of the pipe [m], > 0
 * @param input.fillerThickness  t_f, over the defect [m], >= 0
 * @returns diameter [m]
 * @throws CalculationError `invalid-input`
 * @remarks The pressure acts on this circle once the metal under the filler is gone: the hoop load is taken on it.
 */
export function wrappedDiameter(input: WrappedDiameterInput): Length {
  const { outsideDiameter: D, fillerThickness: tf } = input;
  positive(D, 'outsideDiameter', 'm');
  nonNegative(tf, 'fillerThickness', 'm');
  const diameter = D + 2 * tf;
  finite(diameter, 'wrapped diameter', 'm');
  return diameter as Length;
}

export const wrappedDiameterFormula = /* @__PURE__ */ formula<WrappedDiameterInput, Length>({
  id: 'laminate/wrapped-diameter',
  title: 'Diameter that the laminate goes round',
  compute: wrappedDiameter,
  equation: { expression: 'D + 2 * t_f' },
  inputs: {
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter of the pipe', sample: [0.0213, 1.2] },
    fillerThickness: { symbol: 't_f', kind: 'length', name: 'filler over the defect', sample: [0, 0.03] },
  },
  output: { symbol: 'D_w', kind: 'length', name: 'diameter over the filler' },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'geometry' } },
  limits: [],
});

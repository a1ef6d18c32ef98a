import { finite, formula, nonNegative, positive } from '../formula/index.js';
import type { Length } from '../quantity/index.js';

export interface FinalLapInput {
  readonly plyThickness: Length;
  readonly leastLap?: Length | undefined;
  readonly thicknesses?: number | undefined;
}

/**
 * Lap by which the last turn of a sheet runs past its start.
 *
 * $$\ell_f = \max(\ell_0, k t)$$
 *
 * @param input.plyThickness t, thickness of one ply [m], > 0
 * @param input.leastLap l_0, least lap [m], >= 0; 0.15 when not given
 * @param input.thicknesses k, least lap in ply thicknesses, >= 0; 10 when not given
 * @returns final lap [m]
 * @throws CalculationError `invalid-input`
 * @remarks 150 mm or ten thicknesses are what the trade uses; a maker may ask for more.
 */
export function finalLap(input: FinalLapInput): Length {
  const { plyThickness: t, leastLap: l0 = 0.15 as Length, thicknesses: k = 10 } = input;
  positive(t, 'plyThickness', 'm');
  nonNegative(l0, 'leastLap', 'm');
  nonNegative(k, 'thicknesses', '');
  const l = Math.max(l0, k * t);
  finite(l, 'finalLap', 'm');
  return l as Length;
}

export const finalLapFormula = /* @__PURE__ */ formula<FinalLapInput, Length>({
  id: 'wrap/final-lap',
  title: 'Final lap of a sheet',
  search: ['overlap', 'seam'],
  compute: finalLap,
  equation: { expression: 'max(l_0, k * t)' },
  inputs: {
    plyThickness: { symbol: 't', kind: 'length', name: 'thickness of one ply', sample: [0.0002, 0.002] },
    leastLap: { symbol: 'l_0', kind: 'length', name: 'least lap', sample: [0.05, 0.3], default: 0.15 },
    thicknesses: { symbol: 'k', kind: 'number', name: 'least lap in ply thicknesses', sample: [5, 50], default: 10 },
  },
  output: { symbol: 'l_f', kind: 'length', name: 'final lap' },
  sources: [],
  evidence: { form: { tag: 'practice' }, leastLap: { tag: 'practice' }, thicknesses: { tag: 'practice' } },
  limits: [],
});

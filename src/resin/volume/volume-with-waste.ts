import { formula, nonNegative, positive } from '../../formula/index.js';
import type { Ratio, Volume } from '../../quantity/index.js';

export interface VolumeWithWasteInput {
  readonly volume: Volume;
  readonly waste?: Ratio | undefined;
}

/**
 * Volume to order so that the wanted volume is left after waste.
 *
 * $$V_w = V (1 + \omega)$$
 *
 * @param input.volume V, volume [m3], > 0
 * @param input.waste omega, waste as a part of the amount [1], >= 0; 0.15 when not given
 * @returns volume with waste [m3]
 * @throws CalculationError `invalid-input`
 * @remarks 10 to 25 % is usual for hand-mixed filler.
 */
export function volumeWithWaste(input: VolumeWithWasteInput): Volume {
  const { volume: V, waste: omega = 0.15 as Ratio } = input;
  positive(V, 'volume', 'm3');
  nonNegative(omega, 'waste', '');
  const Vw = V * (1 + omega);
  positive(Vw, 'volumeWithWaste', 'm3');
  return Vw as Volume;
}

export const volumeWithWasteFormula = /* @__PURE__ */ formula<VolumeWithWasteInput, Volume>({
  id: 'resin/volume-with-waste',
  title: 'Volume to order',
  search: ['how much to order'],
  compute: volumeWithWaste,
  equation: { expression: 'V * (1 + omega)' },
  inputs: {
    volume: { symbol: 'V', kind: 'volume', name: 'volume', sample: [1e-6, 0.05] },
    waste: { symbol: 'omega', kind: 'ratio', name: 'waste as a part of the amount', sample: [0, 0.4], default: 0.15 },
  },
  output: { symbol: 'V_w', kind: 'volume', name: 'volume with waste' },
  sources: [],
  evidence: { form: { tag: 'practice' }, waste: { tag: 'practice', note: '10 to 25 %' } },
  limits: [],
});

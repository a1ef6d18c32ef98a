import { finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { Ratio, Volume } from '../../quantity/index.js';

export interface WaterToAdd {
  /** Negative where a full line is already so cold that it holds more than it needs. */
  readonly waterToAdd: Volume;
  /** Water in the line at the test pressure, measured without pressure at the reference temperature. */
  readonly volumeAtPressure: Volume;
}

export interface WaterToAddInput {
  readonly volume: Volume;
  readonly compressionFactor: Ratio;
  readonly stretchFactor: Ratio;
  readonly warmingFactor: Ratio;
}

/**
 * Water to pump into a full line to reach the test pressure.
 *
 * $$\Delta V = V F_{wp} F_{pp} F_{pwt} - V$$
 *
 * @param input.volume            V, water that fills the line [m3], >= 0
 * @param input.compressionFactor F_wp, compression of water [1], > 0
 * @param input.stretchFactor     F_pp, stretch of the pipe [1], > 0
 * @param input.warmingFactor     F_pwt, warming of pipe and water [1], > 0
 * @returns water to add and water in the line, both measured without pressure at the reference temperature [m3]
 * @throws CalculationError `invalid-input`
 * @remarks Air left in the line takes more: a line that needs much more than this holds air, and a gas test's energy.
 * @see Pipeline Rules of Thumb Handbook, pp. 140 to 142
 */
export function waterToAdd(input: WaterToAddInput): WaterToAdd {
  const { volume: V, compressionFactor: Fwp, stretchFactor: Fpp, warmingFactor: Fpwt } = input;
  nonNegative(V, 'volume', 'm3');
  positive(Fwp, 'compressionFactor', '');
  positive(Fpp, 'stretchFactor', '');
  positive(Fpwt, 'warmingFactor', '');
  const volumeAtPressure = V * Fwp * Fpp * Fpwt;
  finite(volumeAtPressure, 'volume at test pressure', 'm3');
  return { waterToAdd: (volumeAtPressure - V) as Volume, volumeAtPressure: volumeAtPressure as Volume };
}

export const waterToAddFormula = /* @__PURE__ */ formula<WaterToAddInput, WaterToAdd>({
  id: 'acceptance/water-to-add',
  title: 'Water to reach the test pressure',
  search: ['hydrotest', 'pumping up', 'compressibility'],
  compute: waterToAdd,
  equation: { expression: 'V * F_wp * F_pp * F_pwt - V' },
  inputs: {
    volume: { symbol: 'V', kind: 'volume', name: 'water that fills the line', sample: [0, 1000] },
    compressionFactor: { symbol: 'F_wp', kind: 'ratio', name: 'compression factor of water', sample: [1.001, 1.01] },
    stretchFactor: { symbol: 'F_pp', kind: 'ratio', name: 'stretch factor of the pipe', sample: [1.001, 1.005] },
    warmingFactor: { symbol: 'F_pwt', kind: 'ratio', name: 'warming factor of pipe and water', sample: [0.995, 1.001] },
  },
  output: {
    waterToAdd: { symbol: 'V_add', kind: 'volume', name: 'water to add' },
    volumeAtPressure: { symbol: 'V_tp', kind: 'volume', name: 'volume at test pressure' },
  },
  sources: [{ key: 'rules-of-thumb', locator: 'pp. 140 to 142' }],
  evidence: { form: { tag: 'published' } },
  limits: [],
});

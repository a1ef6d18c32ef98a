import { formula, nonNegative, positive } from '../../formula/index.js';
import type { CorrosionRate, Length, Time } from '../../quantity/index.js';

export interface WallAtEndOfLifeInput {
  readonly presentWall: Length;
  readonly rate: CorrosionRate;
  readonly life: Time;
}

/**
 * Wall that is left at the end of life; 0 where the loss has reached through.
 *
 * $$t_{eol} = \max(t - r\,\tau,\ 0)$$
 *
 * @param input.presentWall  t, at the thinnest point [m], > 0
 * @param input.rate         r, of the loss that goes on [m/s], >= 0
 * @param input.life         tau, design life of the repair [s], >= 0
 * @returns wall at end of life [m]
 * @throws CalculationError `invalid-input`
 * @remarks Loss from outside is taken as stopped under a sealed repair; loss from inside goes on.
 * @see API 570; common practice
 */
export function wallAtEndOfLife(input: WallAtEndOfLifeInput): Length {
  const { presentWall: t, rate: r, life } = input;
  positive(t, 'presentWall', 'm');
  nonNegative(r, 'rate', 'm/s');
  nonNegative(life, 'life', 's');
  return Math.max(t - r * life, 0) as Length;
}

export const wallAtEndOfLifeFormula = /* @__PURE__ */ formula<WallAtEndOfLifeInput, Length>({
  id: 'pipe/wall-at-end-of-life',
  title: 'Wall at the end of life',
  search: ['corrosion growth', 'remaining wall', 'wall loss', 'thinning'],
  compute: wallAtEndOfLife,
  equation: { expression: 'max(t - r * T, 0 * t)' },
  inputs: {
    presentWall: { symbol: 't', kind: 'length', name: 'present wall at the thinnest point', sample: [0.001, 0.03] },
    rate: { symbol: 'r', kind: 'corrosion rate', name: 'corrosion rate', sample: [0, 2e-11] },
    life: { symbol: 'T', kind: 'time', name: 'design life of the repair', sample: [0, 1e9] },
  },
  output: { symbol: 't_eol', kind: 'length', name: 'wall at the end of life' },
  sources: [{ key: 'api-570', locator: 'remaining life, solved for the wall' }],
  evidence: { form: { tag: 'practice' } },
  limits: [],
});

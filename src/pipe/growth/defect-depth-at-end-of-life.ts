import { finite, formula, nonNegative } from '../../formula/index.js';
import type { CorrosionRate, Length, Time } from '../../quantity/index.js';

export interface DefectDepthAtEndOfLifeInput {
  readonly defectDepth: Length;
  readonly rate: CorrosionRate;
  readonly life: Time;
}

/**
 * Depth that a metal loss reaches by the end of life.
 *
 * $$d_{eol} = d + r\,\tau$$
 *
 * @param input.defectDepth  d, today [m], >= 0
 * @param input.rate         r, growth of the depth [m/s], >= 0
 * @param input.life         tau, design life of the repair [s], >= 0
 * @returns depth at end of life [m]; it may exceed the wall, which then is gone
 * @throws CalculationError `invalid-input`
 * @see common practice
 */
export function defectDepthAtEndOfLife(input: DefectDepthAtEndOfLifeInput): Length {
  const { defectDepth: d, rate: r, life } = input;
  nonNegative(d, 'defectDepth', 'm');
  nonNegative(r, 'rate', 'm/s');
  nonNegative(life, 'life', 's');
  const depth = d + r * life;
  finite(depth, 'depth at end of life', 'm');
  return depth as Length;
}

export const defectDepthAtEndOfLifeFormula = /* @__PURE__ */ formula<DefectDepthAtEndOfLifeInput, Length>({
  id: 'pipe/defect-depth-at-end-of-life',
  title: 'Depth of the metal loss at the end of life',
  search: ['corrosion growth', 'pit depth'],
  compute: defectDepthAtEndOfLife,
  equation: { expression: 'd + r * T' },
  inputs: {
    defectDepth: { symbol: 'd', kind: 'length', name: 'depth of the defect today', sample: [0, 0.02] },
    rate: { symbol: 'r', kind: 'corrosion rate', name: 'growth of the depth', sample: [0, 2e-11] },
    life: { symbol: 'T', kind: 'time', name: 'design life of the repair', sample: [0, 1e9] },
  },
  output: { symbol: 'd_eol', kind: 'length', name: 'depth at the end of life' },
  sources: [],
  evidence: { form: { tag: 'practice' } },
  limits: [],
});

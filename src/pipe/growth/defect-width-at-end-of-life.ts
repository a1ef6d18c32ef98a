import { finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { CorrosionRate, Length, Time } from '../../quantity/index.js';

export interface DefectWidthAtEndOfLifeInput {
  readonly defectWidth: Length;
  readonly rate: CorrosionRate;
  readonly life: Time;
  readonly outsideDiameter: Length;
}

/**
 * Width that a metal loss reaches by the end of life, growing at both sides until it is all round.
 *
 * $$c_{eol} = \min(c + 2 r\,\tau,\ \pi D)$$
 *
 * @param input.defectWidth      c, round the pipe today [m], >= 0
 * @param input.rate             r, growth at each side [m/s], >= 0
 * @param input.life             tau, design life of the repair [s], >= 0
 * @param input.outsideDiameter  D [m], > 0
 * @returns width at end of life [m]
 * @throws CalculationError `invalid-input`
 * @see common practice
 */
export function defectWidthAtEndOfLife(input: DefectWidthAtEndOfLifeInput): Length {
  const { defectWidth: c, rate: r, life, outsideDiameter: D } = input;
  nonNegative(c, 'defectWidth', 'm');
  nonNegative(r, 'rate', 'm/s');
  nonNegative(life, 'life', 's');
  positive(D, 'outsideDiameter', 'm');
  const width = Math.min(c + 2 * (r * life), Math.PI * D);
  finite(width, 'width at end of life', 'm');
  return width as Length;
}

export const defectWidthAtEndOfLifeFormula = /* @__PURE__ */ formula<DefectWidthAtEndOfLifeInput, Length>({
  id: 'pipe/defect-width-at-end-of-life',
  title: 'Width of the metal loss at the end of life',
  compute: defectWidthAtEndOfLife,
  equation: { expression: 'min(c + 2 * r * T, pi * D)' },
  inputs: {
    defectWidth: { symbol: 'c', kind: 'length', name: 'width of the defect today', sample: [0, 1] },
    rate: { symbol: 'r', kind: 'corrosion rate', name: 'growth at each side', sample: [0, 2e-11] },
    life: { symbol: 'T', kind: 'time', name: 'design life of the repair', sample: [0, 1e9] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.1, 1.2] },
  },
  output: { symbol: 'c_eol', kind: 'length', name: 'width at the end of life' },
  sources: [],
  evidence: { form: { tag: 'practice' } },
  limits: [],
});

import { below, finite, formula, nonNegative, positive } from '../formula/index.js';
import type { Length } from '../quantity/index.js';

export interface MeanThicknessInput {
  readonly thickness: Length;
  readonly width: Length;
  readonly sideLap: Length;
}

/**
 * Mean thickness of a wrap whose turns or bands lap each other: what lies there, spread over the pipe. It is never below what
 * lies everywhere, on which strength counts.
 *
 * $$t_m = t\,\frac{w}{w - s}$$
 *
 * @param input.thickness t, of all passes or plies without their laps [m], > 0
 * @param input.width     w, of the tape or the sheet [m], > 0
 * @param input.sideLap   s, by which neighbouring turns or bands lap [m], >= 0 and < w
 * @returns mean thickness [m]
 * @throws CalculationError `invalid-input`
 * @remarks Eleven passes at 49 per cent overlap lay eleven layers everywhere, and nearly twice as many on average.
 */
export function meanThickness(input: MeanThicknessInput): Length {
  const { thickness: t, width: w, sideLap: s } = input;
  positive(t, 'thickness', 'm');
  positive(w, 'width', 'm');
  nonNegative(s, 'sideLap', 'm');
  below(s, w, 'the width', 'sideLap', 'm');
  const mean = (t * w) / (w - s);
  finite(mean, 'mean thickness', 'm');
  return mean as Length;
}

export const meanThicknessFormula = /* @__PURE__ */ formula<MeanThicknessInput, Length>({
  id: 'wrap/mean-thickness',
  title: 'Mean thickness of a lapped wrap',
  search: ['overlap', 'side lap', 'how thick does it get', 'build up'],
  compute: meanThickness,
  equation: { expression: 't * w / (w - s)' },
  inputs: {
    thickness: {
      symbol: 't',
      kind: 'length',
      name: 'thickness of all passes or plies without their laps',
      sample: [0.0008, 0.02],
    },
    width: { symbol: 'w', kind: 'length', name: 'width of the tape or the sheet', sample: [0.05, 0.5] },
    sideLap: { symbol: 's', kind: 'length', name: 'lap of neighbouring turns or bands', sample: [0, 0.04] },
  },
  output: { symbol: 't_m', kind: 'length', name: 'mean thickness' },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'area of all that is laid over the area of the pipe' } },
  limits: [],
});

import { below, finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';

export interface ThickWallCoefficientInput {
  readonly insideDiameter: Length;
  readonly outsideDiameter: Length;
  readonly allowance?: Length | undefined;
}

/**
 * Coefficient Y of the wall equation for pipe whose wall is D/6 or thicker.
 *
 *$$Y = \frac{d_i + 2 c}{D + d_i + 2 c}$$
 *
 * @param input.insideDiameter   d_i, bore as new [m], > 0
 * @param input.outsideDiameter  D [m], > d_i + 2 c
 * @param input.allowance        c, corrosion and mechanical allowances [m], >= 0; 0 when left out
 * @returns Y [1], below 0.5
 * @throws CalculationError `invalid-input`
 * @remarks The code asks for a special analysis of such pipe, so the wall equations here refuse it; this is the value to
 *   carry into that analysis. With it, equation (3a) sets the bore stress of the thick cylinder equal to S E W.
 * @see ASME B31.3, Table 304.1.1, note
 */
export function thickWallCoefficient(input: ThickWallCoefficientInput): number {
  const { insideDiameter: d, outsideDiameter: D, allowance: c = 0 } = input;
  positive(d, 'insideDiameter', 'm');
  nonNegative(c, 'allowance', 'm');
  positive(D, 'outsideDiameter', 'm');
  below(d + 2 * c, D, 'the outside diameter', 'insideDiameter + 2 allowance', 'm');
  const Y = (d + 2 * c) / (D + d + 2 * c);
  finite(Y, 'coefficient Y', '');
  return Y;
}

export const thickWallCoefficientFormula = /* @__PURE__ */ formula<ThickWallCoefficientInput, number>({
  id: 'pipe/thick-wall-coefficient',
  title: 'Coefficient Y of a thick wall',
  compute: thickWallCoefficient,
  equation: { expression: '(d_i + 2 * c) / (D + d_i + 2 * c)' },
  inputs: {
    insideDiameter: { symbol: 'd_i', kind: 'length', name: 'inside diameter as new', sample: [0.015, 0.8] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.05, 1.5] },
    allowance: { symbol: 'c', kind: 'length', name: 'sum of the allowances', sample: [0, 0.006], default: 0 },
  },
  output: { symbol: 'Y', kind: 'number', name: 'coefficient Y' },
  sources: [{ key: 'asme-b31-3', locator: 'Table 304.1.1, thick walls' }],
  evidence: { form: { tag: 'secondary', derived: 'equation (3a) with the bore stress of the thick cylinder' } },
  limits: [],
});

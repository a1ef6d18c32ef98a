import { finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';

export interface Api579LengthParameterInput {
  readonly insideDiameter: Length;
  readonly correctedWall: Length;
  readonly defectLength: Length;
}

/**
 * Length parameter of a local metal loss in a shell.
 *
 * $$\lambda = \frac{1.285\,s}{\sqrt{D_i t_c}}$$
 *
 * @param input.insideDiameter  D_i, bore [m], > 0
 * @param input.correctedWall   t_c, wall away from the loss, less what is still to be lost [m], > 0 and < D_i
 * @param input.defectLength    s, along the pipe [m], >= 0
 * @returns length parameter
 * @throws CalculationError `invalid-input`
 * @see API 579-1, Part 5
 */
export function api579LengthParameter(input: Api579LengthParameterInput): number {
  const { insideDiameter: D, correctedWall: t, defectLength: s } = input;
  positive(D, 'insideDiameter', 'm');
  positive(t, 'correctedWall', 'm');
  nonNegative(s, 'defectLength', 'm');
  const lambda = 1.285 * (Math.sqrt(s / D) * Math.sqrt(s / t));
  finite(lambda, 'length parameter', '');
  return lambda;
}

export const api579LengthParameterFormula = /* @__PURE__ */ formula<Api579LengthParameterInput, number>({
  id: 'pipe/api579-length-parameter',
  title: 'Length parameter of a local metal loss',
  compute: api579LengthParameter,
  equation: { expression: '1.285 * s / sqrt(D_i * t_c)' },
  inputs: {
    insideDiameter: { symbol: 'D_i', kind: 'length', name: 'inside diameter', sample: [0.05, 1.2] },
    correctedWall: {
      symbol: 't_c',
      kind: 'length',
      name: 'wall away from the loss, at end of life',
      sample: [0.003, 0.03],
    },
    defectLength: { symbol: 's', kind: 'length', name: 'length of the defect along the pipe', sample: [0, 1] },
  },
  output: { symbol: 'lambda', kind: 'number', name: 'length parameter' },
  sources: [{ key: 'api-579', locator: 'Part 5, Level 1' }],
  evidence: { form: { tag: 'secondary' } },
  limits: [],
});

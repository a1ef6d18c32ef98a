import { finite, formula, nonNegative } from '../../formula/index.js';
import { checkPipeWall } from '../remaining-strength/part-wall-defect.js';
import type { FoliasInput } from './folias-b31g.js';

/**
 * Length factor A of the 1991 manual.
 *
 * $$A = \frac{0.893\,L}{\sqrt{D t}}$$
 *
 * @param input.outsideDiameter  D [m], > 0
 * @param input.wallThickness    t [m], > 0 and < D/2
 * @param input.defectLength     L, along the pipe [m], >= 0
 * @returns length factor
 * @throws CalculationError `invalid-input`
 * @remarks A^2 + 1 stands for M^2 = 1 + 0.8 L^2/(D t); 0.893^2 is 0.797, so the two forms differ by up to 0.2 per cent.
 * @see ASME B31G-1991, Part 4
 */
export function b31g1991LengthFactor(input: FoliasInput): number {
  const { outsideDiameter: D, wallThickness: t, defectLength: L } = input;
  checkPipeWall(D, t);
  nonNegative(L, 'defectLength', 'm');
  const A = 0.893 * (Math.sqrt(L / D) * Math.sqrt(L / t));
  finite(A, 'length factor', '');
  return A;
}

export const b31g1991LengthFactorFormula = /* @__PURE__ */ formula<FoliasInput, number>({
  id: 'pipe/b31g-1991-length-factor',
  title: 'Length factor of B31G-1991',
  compute: b31g1991LengthFactor,
  equation: { expression: '0.893 * L / sqrt(D * t)' },
  inputs: {
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.1, 1.2] },
    wallThickness: { symbol: 't', kind: 'length', name: 'wall thickness', sample: [0.005, 0.03] },
    defectLength: { symbol: 'L', kind: 'length', name: 'length of the defect along the pipe', sample: [0, 0.8] },
  },
  output: { symbol: 'A', kind: 'number', name: 'length factor' },
  sources: [{ key: 'asme-b31g-1991', locator: 'Part 4' }],
  evidence: { form: { tag: 'secondary' } },
  limits: [],
});

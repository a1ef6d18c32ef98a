import { finite, formula, nonNegative } from '../../formula/index.js';
import type { FoliasInput } from '../b31g/folias-b31g.js';
import { checkPipeWall } from '../remaining-strength/part-wall-defect.js';

/**
 * Length correction factor of DNV-RP-F101.
 *
 * $$Q = \sqrt{1 + 0.31\,\frac{L^2}{D t}}$$
 *
 * @param input.outsideDiameter  D [m], > 0
 * @param input.wallThickness    t [m], > 0 and < D/2
 * @param input.defectLength     L, along the pipe [m], >= 0
 * @returns length correction factor, 1 for a defect of no length
 * @throws CalculationError `invalid-input`
 * @see DNV-RP-F101, Part B, single defect
 */
export function dnvLengthCorrection(input: FoliasInput): number {
  const { outsideDiameter: D, wallThickness: t, defectLength: L } = input;
  checkPipeWall(D, t);
  nonNegative(L, 'defectLength', 'm');
  const Q = Math.sqrt(1 + 0.31 * ((L / D) * (L / t)));
  finite(Q, 'length correction factor', '');
  return Q;
}

export const dnvLengthCorrectionFormula = /* @__PURE__ */ formula<FoliasInput, number>({
  id: 'pipe/dnv-length-correction',
  title: 'Length correction factor of DNV-RP-F101',
  search: ['folias', 'bulging'],
  compute: dnvLengthCorrection,
  equation: { expression: 'sqrt(1 + 0.31 * z)', where: [{ symbol: 'z', kind: 'number', expression: 'L^2 / (D * t)' }] },
  inputs: {
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.1, 1.2] },
    wallThickness: { symbol: 't', kind: 'length', name: 'wall thickness', sample: [0.005, 0.03] },
    defectLength: { symbol: 'L', kind: 'length', name: 'length of the defect along the pipe', sample: [0, 1.2] },
  },
  output: { symbol: 'Q', kind: 'number', name: 'length correction factor' },
  sources: [{ key: 'dnv-rp-f101', locator: 'Part B, single defect' }],
  evidence: { form: { tag: 'secondary' } },
  limits: [],
});

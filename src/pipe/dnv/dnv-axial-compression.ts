import { atMost, finite, formula, nonNegative, positive, refuse } from '../../formula/index.js';
import type { Length, Stress } from '../../quantity/index.js';
import { checkPartWallDefect, type PartWallDefect } from '../remaining-strength/part-wall-defect.js';

export interface DnvAxialCompressionInput extends PartWallDefect {
  readonly defectWidth: Length;
  readonly tensileStrength: Stress;
  readonly axialStress: Stress;
}

/**
 * Reduction of the DNV-RP-F101 capacity of a single defect by axial compression from outside loads.
 *
 * $$H_1 = \min\left(1,\ \frac{1 + \sigma_L/(s_u A_r)}{1 - \frac{1}{2 A_r}\frac{1-x}{1-x/Q}}\right),\qquad
 * A_r = 1 - x\,\frac{c}{\pi D}$$
 *
 * It is 1 unless the axial stress is more compressive than half of s_u (1 - x)/(1 - x/Q).
 *
 * @param input.outsideDiameter  D [m], > 0
 * @param input.wallThickness    t [m], > 0 and < D/2
 * @param input.defectDepth      d, deepest point [m], >= 0 and at most 0.85 t
 * @param input.defectLength     L, along the pipe [m], > 0
 * @param input.defectWidth      c, round the pipe [m], >= 0 and at most pi D
 * @param input.tensileStrength  s_u [Pa], > 0
 * @param input.axialStress      sigma_L, axial plus bending from outside loads on the full section [Pa], compression negative
 * @returns factor on the failure pressure, above 0 and at most 1
 * @throws CalculationError `invalid-input`; `outside-validity` for a depth over 0.85 of the wall; `no-solution` when the
 *   compression alone uses up the section
 * @remarks The axial stress of the closed ends under pressure is not counted.
 * @see DNV-RP-F101 (2004), 8.3, as recalled
 */
export function dnvAxialCompression(input: DnvAxialCompressionInput): number {
  const { outsideDiameter: D, wallThickness: t, defectDepth: d, defectLength: L, defectWidth: c } = input;
  const { tensileStrength: S, axialStress: sigma } = input;
  checkPartWallDefect(input, 0.85, 'DNV-RP-F101');
  nonNegative(c, 'defectWidth', 'm');
  atMost(c, Math.PI * D, 'the circumference', 'defectWidth', 'm');
  positive(S, 'tensileStrength', 'Pa');
  finite(sigma, 'axialStress', 'Pa');
  const x = d / t;
  const hoopShare = (1 - x) / (1 - x / Math.sqrt(1 + 0.31 * ((L / D) * (L / t))));
  const Ar = 1 - x * (c / (Math.PI * D));
  const numerator = 1 + sigma / (S * Ar);
  const denominator = 1 - hoopShare / (2 * Ar);
  if (!(numerator > 0)) {
    const constraint = 'must be above {limit}, where the compression alone uses up the section at the defect';
    refuse({ code: 'no-solution', parameter: 'axialStress', value: sigma, unit: 'Pa', constraint, limit: -S * Ar });
  }
  // A denominator of 0 or less lies below the numerator: such a section never needs the reduction before it is used up.
  return numerator < denominator ? numerator / denominator : 1;
}

export const dnvAxialCompressionFormula = /* @__PURE__ */ formula<DnvAxialCompressionInput, number>({
  id: 'pipe/dnv-axial-compression',
  title: 'Reduction by axial compression, DNV-RP-F101',
  compute: dnvAxialCompression,
  equation: {
    where: [
      { symbol: 'x', kind: 'number', expression: 'd / t' },
      { symbol: 'Q', kind: 'number', expression: 'sqrt(1 + 0.31 * L^2 / (D * t))' },
      { symbol: 'h', kind: 'number', expression: '(1 - x) / (1 - x / Q)' },
      { symbol: 'A_r', kind: 'number', expression: '1 - x * c / (pi * D)' },
    ],
    branches: [
      {
        when: 'sigma_L < -0.5 * s_u * h',
        expression: 'min(1, (1 + sigma_L / (s_u * A_r)) / (1 - h / (2 * A_r)))',
      },
      { expression: '1' },
    ],
  },
  inputs: {
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.1, 1.2] },
    wallThickness: { symbol: 't', kind: 'length', name: 'wall thickness', sample: [0.005, 0.03] },
    defectDepth: { symbol: 'd', kind: 'length', name: 'depth of the defect', sample: [0.0005, 0.015] },
    defectLength: { symbol: 'L', kind: 'length', name: 'length of the defect along the pipe', sample: [0.01, 1.2] },
    defectWidth: { symbol: 'c', kind: 'length', name: 'width of the defect round the pipe', sample: [0, 0.8] },
    tensileStrength: {
      symbol: 's_u',
      kind: 'stress',
      name: 'specified minimum tensile strength',
      sample: [300e6, 800e6],
    },
    axialStress: { symbol: 'sigma_L', kind: 'stress', name: 'axial stress from outside loads', sample: [-300e6, 50e6] },
  },
  output: { symbol: 'H_1', kind: 'number', name: 'factor on the failure pressure' },
  sources: [{ key: 'dnv-rp-f101', locator: '8.3, as recalled' }],
  evidence: { form: { tag: 'recalled' } },
  limits: [
    {
      sort: 'stop',
      text: 'Depth over 0.85 of the wall.',
      source: { key: 'dnv-rp-f101', locator: 'Part B, single defect' },
    },
  ],
});

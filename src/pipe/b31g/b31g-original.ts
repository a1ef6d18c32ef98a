import { formula, positive } from '../../formula/index.js';
import type { GaugePressure, Stress } from '../../quantity/index.js';
import { checkPartWallDefect, type PartWallDefect } from '../remaining-strength/part-wall-defect.js';

export interface B31gInput extends PartWallDefect {
  readonly flowStress: Stress;
}

/**
 * Failure pressure of a pipe with one axial metal loss by original B31G, which takes the loss as a parabola.
 *
 * $$P_f = S_{flow} \frac{2t}{D}\,\frac{1 - \frac{2}{3}x}{1 - \frac{2}{3}\frac{x}{M}}\quad(z \le 20),\qquad
 * P_f = S_{flow} \frac{2t}{D}\,(1 - x)\quad(z > 20)$$
 *
 * with x = d/t, z = L^2/(D t) and M = sqrt(1 + 0.8 z).
 *
 * @param input.outsideDiameter  D [m], > 0
 * @param input.wallThickness    t [m], > 0 and < D/2
 * @param input.defectDepth      d, deepest point [m], >= 0 and at most 0.8 t
 * @param input.defectLength     L, along the pipe [m], > 0
 * @param input.flowStress       S_flow [Pa], > 0; 1.1 times yield is the method's own
 * @returns failure pressure [Pa]
 * @throws CalculationError `invalid-input`; `outside-validity` for a depth over 0.8 of the wall
 * @remarks Drops at z = 20, by design: a longer loss gets no help from its ends. Below 0.1 of the wall the method asks for
 *   no action. Not for cracks, dents, gouges, selective seam corrosion or brittle pipe.
 * @see ASME B31G, original form
 */
export function b31gOriginal(input: B31gInput): GaugePressure {
  const { outsideDiameter: D, wallThickness: t, defectDepth: d, defectLength: L, flowStress: S } = input;
  checkPartWallDefect(input, 0.8, 'ASME B31G');
  positive(S, 'flowStress', 'Pa');
  const x = d / t;
  const z = (L / D) * (L / t);
  if (z > 20) return (S * ((2 * t) / D) * (1 - x)) as GaugePressure;
  const loss = (2 * x) / 3;
  return ((S * ((2 * t) / D) * (1 - loss)) / (1 - loss / Math.sqrt(1 + 0.8 * z))) as GaugePressure;
}

/**
 * Whether the loss is below a tenth of the wall, where B31G asks for no action.
 *
 * @param input pipe and loss as the assessment has them
 */
export function b31gOriginalShallow(input: PartWallDefect): boolean {
  return input.defectDepth < 0.1 * input.wallThickness;
}

export const b31gOriginalFormula = /* @__PURE__ */ formula<B31gInput, GaugePressure>({
  id: 'pipe/b31g-original',
  title: 'Failure pressure by original B31G',
  search: ['corrosion', 'metal loss', 'remaining strength'],
  compute: b31gOriginal,
  equation: {
    where: [
      { symbol: 'x', kind: 'number', expression: 'd / t' },
      { symbol: 'z', kind: 'number', expression: 'L^2 / (D * t)' },
    ],
    branches: [
      {
        when: 'z <= 20',
        where: [{ symbol: 'M', kind: 'number', expression: 'sqrt(1 + 0.8 * z)' }],
        expression: 'S_flow * 2 * t / D * (1 - 2/3 * x) / (1 - 2/3 * x / M)',
      },
      { expression: 'S_flow * 2 * t / D * (1 - x)' },
    ],
  },
  inputs: {
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.1, 1.2] },
    wallThickness: { symbol: 't', kind: 'length', name: 'wall thickness', sample: [0.005, 0.03] },
    defectDepth: { symbol: 'd', kind: 'length', name: 'depth of the defect', sample: [0.0005, 0.015] },
    defectLength: { symbol: 'L', kind: 'length', name: 'length of the defect along the pipe', sample: [0.01, 0.8] },
    flowStress: { symbol: 'S_flow', kind: 'stress', name: 'flow stress', sample: [200e6, 700e6] },
  },
  output: { symbol: 'P_f', kind: 'gauge pressure', name: 'failure pressure' },
  sources: [{ key: 'asme-b31g', locator: 'Level 1, original form' }],
  evidence: { form: { tag: 'secondary' } },
  limits: [
    {
      sort: 'stop',
      text: 'Depth over 0.8 of the wall: repair or replace.',
      source: { key: 'asme-b31g', locator: 'Level 1, original form' },
    },
    {
      sort: 'note',
      text: 'Depth below 0.1 of the wall: the method asks for no action.',
      beyond: b31gOriginalShallow,
      source: { key: 'asme-b31g', locator: 'Level 1, original form' },
    },
  ],
});

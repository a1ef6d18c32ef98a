import { atMost, finite, formula, positive } from '../../formula/index.js';
import type { GaugePressure, Stress } from '../../quantity/index.js';
import { checkPartWallDefect, type PartWallDefect } from '../remaining-strength/part-wall-defect.js';

export interface DnvSingleDefectInput extends PartWallDefect {
  readonly tensileStrength: Stress;
  readonly editionFactor?: number;
}

/**
 * Capacity of a pipe with one metal loss by DNV-RP-F101, Part B: on the mean diameter and the tensile strength.
 *
 * $$P_f = k\,\frac{2 t s_u}{D - t}\,\frac{1 - x}{1 - x/Q},\qquad x = \frac{d}{t},\qquad Q = \sqrt{1 + 0.31\,\frac{L^2}{D t}}$$
 *
 * @param input.outsideDiameter  D [m], > 0
 * @param input.wallThickness    t [m], > 0 and < D/2
 * @param input.defectDepth      d, deepest point [m], >= 0 and at most 0.85 t
 * @param input.defectLength     L, along the pipe [m], > 0
 * @param input.tensileStrength  s_u, specified minimum tensile strength [Pa], > 0
 * @param input.editionFactor    k, > 0 and at most 1.05: 1 by default; the editions from 2017 on have 1.05
 * @returns failure pressure [Pa]
 * @throws CalculationError `invalid-input`; `outside-validity` for a depth over 0.85 of the wall
 * @remarks For ductile pipe. Not for cracks, dents or gouges.
 * @see DNV-RP-F101, Part B, single defect
 */
export function dnvSingleDefect(input: DnvSingleDefectInput): GaugePressure {
  const { outsideDiameter: D, wallThickness: t, defectDepth: d, defectLength: L } = input;
  const { tensileStrength: S, editionFactor: k = 1 } = input;
  checkPartWallDefect(input, 0.85, 'DNV-RP-F101');
  positive(S, 'tensileStrength', 'Pa');
  positive(k, 'editionFactor', '');
  atMost(k, 1.05, 'that of the editions from 2017 on', 'editionFactor', '');
  const x = d / t;
  const Q = Math.sqrt(1 + 0.31 * ((L / D) * (L / t)));
  const pressure = (k * S * ((2 * t) / (D - t)) * (1 - x)) / (1 - x / Q);
  finite(pressure, 'failure pressure', 'Pa');
  return pressure as GaugePressure;
}

export const dnvSingleDefectFormula = /* @__PURE__ */ formula<DnvSingleDefectInput, GaugePressure>({
  id: 'pipe/dnv-single-defect',
  title: 'Failure pressure by DNV-RP-F101, single defect',
  search: ['corrosion', 'metal loss', 'remaining strength'],
  compute: dnvSingleDefect,
  equation: {
    where: [
      { symbol: 'x', kind: 'number', expression: 'd / t' },
      { symbol: 'Q', kind: 'number', expression: 'sqrt(1 + 0.31 * L^2 / (D * t))' },
    ],
    expression: 'k * 2 * t * s_u / (D - t) * (1 - x) / (1 - x / Q)',
  },
  inputs: {
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.1, 1.2] },
    wallThickness: { symbol: 't', kind: 'length', name: 'wall thickness', sample: [0.005, 0.03] },
    defectDepth: { symbol: 'd', kind: 'length', name: 'depth of the defect', sample: [0.0005, 0.015] },
    defectLength: { symbol: 'L', kind: 'length', name: 'length of the defect along the pipe', sample: [0.01, 1.2] },
    tensileStrength: {
      symbol: 's_u',
      kind: 'stress',
      name: 'specified minimum tensile strength',
      sample: [300e6, 800e6],
    },
    editionFactor: { symbol: 'k', kind: 'number', name: 'factor of the edition', sample: [1, 1.05], default: 1 },
  },
  output: { symbol: 'P_f', kind: 'gauge pressure', name: 'failure pressure' },
  sources: [{ key: 'dnv-rp-f101', locator: 'Part B, single defect' }],
  evidence: {
    form: { tag: 'secondary' },
    editionFactor: { tag: 'secondary', note: '1 is the older and lower value; a data archive of 2022 uses 1.05.' },
  },
  limits: [
    {
      sort: 'stop',
      text: 'Depth over 0.85 of the wall.',
      source: { key: 'dnv-rp-f101', locator: 'Part B, single defect' },
    },
  ],
});

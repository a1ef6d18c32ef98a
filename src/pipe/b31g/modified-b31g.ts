import { formula, positive } from '../../formula/index.js';
import type { GaugePressure } from '../../quantity/index.js';
import { checkPartWallDefect } from '../remaining-strength/part-wall-defect.js';
import type { B31gInput } from './b31g-original.js';
import { modifiedFolias } from './folias-modified-b31g.js';

/**
 * Failure pressure of a pipe with one axial metal loss by modified B31G, which takes the lost area as 0.85 d L.
 *
 * $$P_f = S_{flow} \frac{2t}{D}\,\frac{1 - 0.85 x}{1 - 0.85 x / M}$$
 *
 * with x = d/t and M the three-term bulging factor of `foliasModifiedB31g`.
 *
 * @param input.outsideDiameter  D [m], > 0
 * @param input.wallThickness    t [m], > 0 and < D/2
 * @param input.defectDepth      d, deepest point [m], >= 0 and at most 0.8 t
 * @param input.defectLength     L, along the pipe [m], > 0
 * @param input.flowStress       S_flow [Pa], > 0
 * @returns failure pressure [Pa]
 * @throws CalculationError `invalid-input`; `outside-validity` for a depth over 0.8 of the wall
 * @remarks Not for cracks, dents, gouges, selective seam corrosion or brittle pipe.
 * @see ASME B31G, modified form; PRCI PR-3-805
 */
export function modifiedB31g(input: B31gInput): GaugePressure {
  const { outsideDiameter: D, wallThickness: t, defectDepth: d, defectLength: L, flowStress: S } = input;
  checkPartWallDefect(input, 0.8, 'ASME B31G');
  positive(S, 'flowStress', 'Pa');
  const loss = 0.85 * (d / t);
  return ((S * ((2 * t) / D) * (1 - loss)) / (1 - loss / modifiedFolias((L / D) * (L / t)))) as GaugePressure;
}

export const modifiedB31gFormula = /* @__PURE__ */ formula<B31gInput, GaugePressure>({
  id: 'pipe/modified-b31g',
  title: 'Failure pressure by modified B31G',
  search: ['corrosion', 'metal loss', '0.85 dl', 'remaining strength'],
  compute: modifiedB31g,
  equation: {
    where: [
      { symbol: 'x', kind: 'number', expression: 'd / t' },
      { symbol: 'z', kind: 'number', expression: 'L^2 / (D * t)' },
    ],
    branches: [
      {
        when: 'z <= 50',
        where: [{ symbol: 'M', kind: 'number', expression: 'sqrt(1 + 0.6275 * z - 0.003375 * z^2)' }],
        expression: 'S_flow * 2 * t / D * (1 - 0.85 * x) / (1 - 0.85 * x / M)',
      },
      {
        where: [{ symbol: 'M', kind: 'number', expression: '0.032 * z + 3.3' }],
        expression: 'S_flow * 2 * t / D * (1 - 0.85 * x) / (1 - 0.85 * x / M)',
      },
    ],
  },
  inputs: {
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.1, 1.2] },
    wallThickness: { symbol: 't', kind: 'length', name: 'wall thickness', sample: [0.005, 0.03] },
    defectDepth: { symbol: 'd', kind: 'length', name: 'depth of the defect', sample: [0.0005, 0.015] },
    defectLength: { symbol: 'L', kind: 'length', name: 'length of the defect along the pipe', sample: [0.01, 1.2] },
    flowStress: { symbol: 'S_flow', kind: 'stress', name: 'flow stress', sample: [200e6, 700e6] },
  },
  output: { symbol: 'P_f', kind: 'gauge pressure', name: 'failure pressure' },
  sources: [
    { key: 'asme-b31g', locator: 'Level 1, modified form' },
    { key: 'kiefner-vieth-1989', locator: '0.85 d L' },
  ],
  evidence: { form: { tag: 'secondary' } },
  limits: [
    {
      sort: 'stop',
      text: 'Depth over 0.8 of the wall: repair or replace.',
      source: { key: 'asme-b31g', locator: 'Level 1, modified form' },
    },
  ],
});

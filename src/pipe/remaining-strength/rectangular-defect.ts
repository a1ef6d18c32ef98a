import { formula, positive } from '../../formula/index.js';
import type { GaugePressure } from '../../quantity/index.js';
import type { B31gInput } from '../b31g/b31g-original.js';
import { modifiedFolias } from '../b31g/folias-modified-b31g.js';
import { checkPartWallDefect } from './part-wall-defect.js';

/**
 * Failure pressure of a pipe with one axial metal loss of even depth (the NG-18 equation), with the three-term bulging factor.
 *
 * $$P_f = S_{flow} \frac{2t}{D}\,\frac{1 - x}{1 - x / M}$$
 *
 * @param input.outsideDiameter  D [m], > 0
 * @param input.wallThickness    t [m], > 0 and < D/2
 * @param input.defectDepth      d, the same over the whole length [m], >= 0 and at most 0.8 t
 * @param input.defectLength     L, along the pipe [m], > 0
 * @param input.flowStress       S_flow [Pa], > 0
 * @returns failure pressure [Pa]
 * @throws CalculationError `invalid-input`; `outside-validity` for a depth over 0.8 of the wall
 * @remarks Never above modified B31G at the same flow stress: for natural corrosion, which is not even, it gives more metal away
 *   than is lost. Original B31G lies below it where L^2/(D t) is above 20.
 * @see NG-18 surface-flaw equation, in an open paper on gouged pipe; PRCI PR-3-805, as recalled
 */
export function rectangularDefect(input: B31gInput): GaugePressure {
  const { outsideDiameter: D, wallThickness: t, defectDepth: d, defectLength: L, flowStress: S } = input;
  checkPartWallDefect(input, 0.8, 'after ASME B31G');
  positive(S, 'flowStress', 'Pa');
  const x = d / t;
  return ((S * ((2 * t) / D) * (1 - x)) / (1 - x / modifiedFolias((L / D) * (L / t)))) as GaugePressure;
}

export const rectangularDefectFormula = /* @__PURE__ */ formula<B31gInput, GaugePressure>({
  id: 'pipe/rectangular-defect',
  title: 'Failure pressure with a loss of even depth',
  search: ['groove', 'gouge', 'ng-18', 'metal loss'],
  compute: rectangularDefect,
  equation: {
    where: [
      { symbol: 'x', kind: 'number', expression: 'd / t' },
      { symbol: 'z', kind: 'number', expression: 'L^2 / (D * t)' },
    ],
    branches: [
      {
        when: 'z <= 50',
        where: [{ symbol: 'M', kind: 'number', expression: 'sqrt(1 + 0.6275 * z - 0.003375 * z^2)' }],
        expression: 'S_flow * 2 * t / D * (1 - x) / (1 - x / M)',
      },
      {
        where: [{ symbol: 'M', kind: 'number', expression: '0.032 * z + 3.3' }],
        expression: 'S_flow * 2 * t / D * (1 - x) / (1 - x / M)',
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
    { key: 'gouged-pipe-paper', locator: 'NG-18 surface-flaw equation' },
    { key: 'kiefner-vieth-1989', locator: 'NG-18 surface-flaw equation' },
  ],
  evidence: { form: { tag: 'secondary' } },
  limits: [
    {
      sort: 'stop',
      text: 'Depth over 0.8 of the wall: repair or replace.',
      source: { key: 'asme-b31g', locator: 'Level 1, taken over from there' },
    },
  ],
});

import { finite, formula, nonNegative } from '../../formula/index.js';
import { checkPipeWall } from '../remaining-strength/part-wall-defect.js';
import type { FoliasInput } from './folias-b31g.js';

/**
 * Folias bulging factor of modified B31G and of the effective-area method.
 *
 * $$M = \sqrt{1 + 0.6275 z - 0.003375 z^2}\quad(z \le 50),\qquad M = 0.032 z + 3.3\quad(z > 50),\qquad z = \frac{L^2}{D t}$$
 *
 * @param input.outsideDiameter  D [m], > 0
 * @param input.wallThickness    t [m], > 0 and < D/2
 * @param input.defectLength     L, along the pipe [m], >= 0
 * @returns bulging factor, 1 for a defect of no length
 * @throws CalculationError `invalid-input`
 * @remarks The two branches meet within 0.15 per cent at z = 50 (4.893 and 4.900).
 * @see ASME B31G; PRCI PR-3-805
 */
export function foliasModifiedB31g(input: FoliasInput): number {
  const { outsideDiameter: D, wallThickness: t, defectLength: L } = input;
  checkPipeWall(D, t);
  nonNegative(L, 'defectLength', 'm');
  const M = modifiedFolias((L / D) * (L / t));
  finite(M, 'bulging factor', '');
  return M;
}

/**
 * The factor from z = L^2/(D t) alone, for the functions of this room that have checked their input.
 *
 * @param z length squared over diameter times wall, without a unit
 */
export function modifiedFolias(z: number): number {
  return z <= 50 ? Math.sqrt(1 + z * (0.6275 - 0.003375 * z)) : 0.032 * z + 3.3;
}

export const foliasModifiedB31gFormula = /* @__PURE__ */ formula<FoliasInput, number>({
  id: 'pipe/folias-modified-b31g',
  title: 'Bulging factor of modified B31G',
  search: ['m_t', 'ng-18'],
  compute: foliasModifiedB31g,
  equation: {
    where: [{ symbol: 'z', kind: 'number', expression: 'L^2 / (D * t)' }],
    branches: [
      { when: 'z <= 50', expression: 'sqrt(1 + 0.6275 * z - 0.003375 * z^2)' },
      { expression: '0.032 * z + 3.3' },
    ],
  },
  inputs: {
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.1, 1.2] },
    wallThickness: { symbol: 't', kind: 'length', name: 'wall thickness', sample: [0.005, 0.03] },
    defectLength: { symbol: 'L', kind: 'length', name: 'length of the defect along the pipe', sample: [0, 1.2] },
  },
  output: { symbol: 'M', kind: 'number', name: 'bulging factor' },
  sources: [
    { key: 'asme-b31g', locator: 'Level 1, modified form' },
    { key: 'kiefner-vieth-1989', locator: 'three-term Folias factor' },
  ],
  evidence: { form: { tag: 'secondary' } },
  limits: [],
});

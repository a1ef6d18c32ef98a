import { finite, formula, nonNegative } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';
import { checkPipeWall } from '../remaining-strength/part-wall-defect.js';

export interface FoliasInput {
  readonly outsideDiameter: Length;
  readonly wallThickness: Length;
  readonly defectLength: Length;
}

/**
 * Folias bulging factor of original B31G: how much a slot along the pipe opens because the wall is curved.
 *
 * $$M = \sqrt{1 + 0.8\,\frac{L^2}{D t}}$$
 *
 * @param input.outsideDiameter  D [m], > 0
 * @param input.wallThickness    t [m], > 0 and < D/2
 * @param input.defectLength     L, along the pipe [m], >= 0
 * @returns bulging factor, 1 for a defect of no length
 * @throws CalculationError `invalid-input`
 * @remarks The method uses it up to L^2/(D t) = 20 and lets longer defects have no help from their ends.
 * @see ASME B31G
 */
export function foliasB31g(input: FoliasInput): number {
  const { outsideDiameter: D, wallThickness: t, defectLength: L } = input;
  checkPipeWall(D, t);
  nonNegative(L, 'defectLength', 'm');
  const M = Math.sqrt(1 + 0.8 * ((L / D) * (L / t)));
  finite(M, 'bulging factor', '');
  return M;
}

/** Whether a defect is longer than original B31G applies its bulging factor to. */
export function foliasB31gBeyondRange(input: FoliasInput): boolean {
  return (input.defectLength / input.outsideDiameter) * (input.defectLength / input.wallThickness) > 20;
}

export const foliasB31gFormula = /* @__PURE__ */ formula<FoliasInput, number>({
  id: 'pipe/folias-b31g',
  title: 'Bulging factor of original B31G',
  search: ['m_t', 'ng-18'],
  compute: foliasB31g,
  equation: { expression: 'sqrt(1 + 0.8 * z)', where: [{ symbol: 'z', kind: 'number', expression: 'L^2 / (D * t)' }] },
  inputs: {
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.1, 1.2] },
    wallThickness: { symbol: 't', kind: 'length', name: 'wall thickness', sample: [0.005, 0.03] },
    defectLength: { symbol: 'L', kind: 'length', name: 'length of the defect along the pipe', sample: [0, 0.5] },
  },
  output: { symbol: 'M', kind: 'number', name: 'bulging factor' },
  sources: [{ key: 'asme-b31g', locator: 'Level 1, original form' }],
  evidence: { form: { tag: 'secondary' } },
  limits: [
    {
      sort: 'note',
      text: 'Original B31G does not apply this factor where L^2/(D t) is above 20.',
      beyond: foliasB31gBeyondRange,
      source: { key: 'asme-b31g', locator: 'Level 1, original form' },
    },
  ],
});

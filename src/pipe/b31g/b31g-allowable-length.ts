import { formula } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';
import { checkDepth, checkPipeWall } from '../remaining-strength/part-wall-defect.js';

export interface B31gAllowableLengthInput {
  readonly outsideDiameter: Length;
  readonly wallThickness: Length;
  readonly defectDepth: Length;
}

/**
 * Longest metal loss that may stay on a pipe at the full pressure of its class, as in the tables of B31G (Level 0).
 *
 * $$L = 1.12\,B\sqrt{D t},\qquad B = 4\quad(x \le 0.175),\qquad
 * B = \sqrt{\left(\frac{x}{1.1 x - 0.15}\right)^2 - 1}\quad(x > 0.175),\qquad x = \frac{d}{t}$$
 *
 * @param input.outsideDiameter  D [m], > 0
 * @param input.wallThickness    t [m], > 0 and < D/2
 * @param input.defectDepth      d, deepest point [m], >= 0 and at most 0.8 t
 * @returns allowable length [m]
 * @throws CalculationError `invalid-input`; `outside-validity` for a depth over 0.8 of the wall
 * @remarks Below 0.1 of the wall the manual sets no limit to the length; the table value at 0.1 is returned there.
 * @see ASME B31G, tables of allowable length
 */
export function b31gAllowableLength(input: B31gAllowableLengthInput): Length {
  const { outsideDiameter: D, wallThickness: t, defectDepth: d } = input;
  checkPipeWall(D, t);
  checkDepth(d, t, 0.8, 'defectDepth', 'ASME B31G');
  const x = d / t;
  const M = x / (1.1 * x - 0.15);
  const B = x > 0.175 ? Math.sqrt((M - 1) * (M + 1)) : 4;
  return (1.12 * B * (Math.sqrt(D) * Math.sqrt(t))) as Length;
}

/** Whether the loss is below a tenth of the wall, where the manual sets no limit to its length. */
export function b31gAllowableLengthBelowTables(input: B31gAllowableLengthInput): boolean {
  return input.defectDepth < 0.1 * input.wallThickness;
}

export const b31gAllowableLengthFormula = /* @__PURE__ */ formula<B31gAllowableLengthInput, Length>({
  id: 'pipe/b31g-allowable-length',
  title: 'Allowable length of the B31G tables',
  search: ['corrosion', 'metal loss'],
  compute: b31gAllowableLength,
  equation: {
    where: [{ symbol: 'x', kind: 'number', expression: 'd / t' }],
    branches: [
      {
        when: 'x > 0.175',
        where: [{ symbol: 'B', kind: 'number', expression: 'sqrt((x / (1.1 * x - 0.15))^2 - 1)' }],
        expression: '1.12 * B * sqrt(D * t)',
      },
      { where: [{ symbol: 'B', kind: 'number', expression: '4' }], expression: '1.12 * B * sqrt(D * t)' },
    ],
  },
  inputs: {
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.1, 1.2] },
    wallThickness: { symbol: 't', kind: 'length', name: 'wall thickness', sample: [0.005, 0.03] },
    defectDepth: { symbol: 'd', kind: 'length', name: 'depth of the defect', sample: [0.0005, 0.015] },
  },
  output: { symbol: 'L_max', kind: 'length', name: 'allowable length' },
  sources: [{ key: 'asme-b31g', locator: 'tables of allowable length' }],
  evidence: { form: { tag: 'secondary' } },
  limits: [
    {
      sort: 'stop',
      text: 'Depth over 0.8 of the wall: repair or replace.',
      source: { key: 'asme-b31g', locator: 'tables of allowable length' },
    },
    {
      sort: 'note',
      text: 'Depth below 0.1 of the wall: the manual sets no limit to the length.',
      beyond: b31gAllowableLengthBelowTables,
      source: { key: 'asme-b31g', locator: 'tables of allowable length' },
    },
  ],
});

import { formula, positive } from '../formula/index.js';
import type { Angle, Ratio } from '../quantity/index.js';

export interface NettingAngleInput {
  readonly hoopToAxial: Ratio;
}

/**
 * Winding angle from the pipe axis at which fibres alone carry a hoop and an axial load.
 *
 * $$\alpha = \arctan\sqrt{q}$$
 *
 * @param input.hoopToAxial q, hoop load over axial load [1], > 0
 * @returns winding angle from the axis [rad]
 * @throws CalculationError `invalid-input`
 * @remarks 2 for a closed tube under pressure. A hoop wrap is no netting wrap: it holds no end load.
 * @see Evans and Gibson 2002
 */
export function nettingAngle(input: NettingAngleInput): Angle {
  const { hoopToAxial: q } = input;
  positive(q, 'hoopToAxial', '');
  return Math.atan(Math.sqrt(q)) as Angle;
}

export const nettingAngleFormula = /* @__PURE__ */ formula<NettingAngleInput, Angle>({
  id: 'wrap/netting-angle',
  title: 'Netting angle',
  search: ['54.7 degrees', 'filament winding'],
  compute: nettingAngle,
  equation: { expression: 'atan(sqrt(q))' },
  inputs: {
    hoopToAxial: { symbol: 'q', kind: 'ratio', name: 'hoop load over axial load', sample: [0.2, 20] },
  },
  output: { symbol: 'alpha', kind: 'angle', name: 'winding angle from the axis' },
  sources: [{ key: 'evans-gibson-2002', locator: 'abstract' }],
  evidence: { form: { tag: 'secondary', derived: 'equilibrium of fibre forces' } },
  limits: [],
});

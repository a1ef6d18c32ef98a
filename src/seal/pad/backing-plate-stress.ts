import { finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { GaugePressure, Length, Stress } from '../../quantity/index.js';
import { type PlateSupport, plateStressFactor } from './plate-stress-factor.js';

export interface BackingPlateStressInput {
  readonly pressure: GaugePressure;
  readonly holeDiameter: Length;
  readonly thickness: Length;
  readonly support: PlateSupport;
  readonly poissonRatio: number;
}

/**
 * Highest bending stress in a flat plate that spans a round hole under pressure.
 *
 * $$\sigma_p = k p \left(\frac{d}{2t}\right)^2, \qquad k = \frac{3}{4}\ \text{or}\ \frac{3(3+\nu)}{8}$$
 *
 * @param input.pressure p, pressure under the plate [Pa], >= 0
 * @param input.holeDiameter d, diameter of the hole under the plate [m], > 0
 * @param input.thickness t, thickness of the plate [m], > 0
 * @param input.support support, how the edge of the hole holds the plate, `clamped` or `simply supported`, the safe
 *   one
 * @param input.poissonRatio nu, Poisson's ratio, 0 to 0.5
 * @returns highest bending stress of the plate [Pa]
 * @throws CalculationError `invalid-input`
 * @remarks Clamped: at the edge; simply supported: in the middle. Small deflections; beyond half the thickness the
 *   plate hangs like a membrane, and this overstates its stress.
 * @see Timoshenko, Strength of Materials, Part II, circular plates
 */
export function backingPlateStress(input: BackingPlateStressInput): Stress {
  const { pressure: p, holeDiameter: d, thickness: t, support, poissonRatio: nu } = input;
  nonNegative(p, 'pressure', 'Pa');
  positive(d, 'holeDiameter', 'm');
  positive(t, 'thickness', 'm');
  const slenderness = d / (2 * t);
  const stress = plateStressFactor(support, nu) * p * slenderness * slenderness;
  finite(stress, 'plate stress', 'Pa');
  return stress as Stress;
}

export const backingPlateStressFormula = /* @__PURE__ */ formula<BackingPlateStressInput, Stress>({
  id: 'seal/backing-plate-stress',
  title: 'Stress of a plate over a hole',
  search: ['patch'],
  compute: backingPlateStress,
  equation: {
    branches: [
      { when: 'support == "clamped"', expression: '0.75 * p * (d / (2 * t))^2' },
      { expression: '3 * (3 + nu) / 8 * p * (d / (2 * t))^2' },
    ],
  },
  inputs: {
    pressure: { symbol: 'p', kind: 'gauge pressure', name: 'pressure under the plate', sample: [0, 10e6] },
    holeDiameter: { symbol: 'd', kind: 'length', name: 'diameter of the hole under the plate', sample: [0.002, 0.06] },
    thickness: { symbol: 't', kind: 'length', name: 'thickness of the plate', sample: [3e-4, 0.006] },
    support: {
      symbol: 'support',
      kind: 'choice',
      name: 'how the edge of the hole holds the plate',
      choices: ['clamped', 'simply supported'],
    },
    poissonRatio: { symbol: 'nu', kind: 'number', name: "Poisson's ratio", sample: [0.2, 0.4] },
  },
  output: { symbol: 'sigma_p', kind: 'stress', name: 'highest bending stress of the plate' },
  sources: [{ key: 'timoshenko', locator: 'circular plate, uniform pressure' }],
  evidence: { form: { tag: 'secondary', derived: 'finite differences of the plate equation' } },
  limits: [],
});

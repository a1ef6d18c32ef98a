import { formula, positive, within } from '../../formula/index.js';
import type { GaugePressure, Length, Stress } from '../../quantity/index.js';
import { type PlateSupport, plateStressFactor } from './plate-stress-factor.js';

export interface BackingPlatePressureInput {
  readonly holeDiameter: Length;
  readonly thickness: Length;
  readonly strength: Stress;
  readonly factor: number;
  readonly support: PlateSupport;
  readonly poissonRatio: number;
}

/**
 * Pressure that a flat plate or sheet over a round hole carries in bending, with a stated factor.
 *
 * $$p = \frac{S}{k f}\left(\frac{2t}{d}\right)^2, \qquad k = \frac{3}{4}\ \text{or}\ \frac{3(3+\nu)}{8}$$
 *
 * @param input.holeDiameter d, diameter of the hole under the plate [m], > 0
 * @param input.thickness t, thickness of the plate [m], > 0
 * @param input.strength S, strength of the plate that the factor counts from [Pa], > 0
 * @param input.factor f, factor on the strength of the plate, 1 or more; no default
 * @param input.support support, how the edge of the hole holds the plate, `clamped` or `simply supported`, the safe
 *   one
 * @param input.poissonRatio nu, Poisson's ratio, 0 to 0.5
 * @returns pressure that the plate carries [Pa]
 * @throws CalculationError `invalid-input`
 * @remarks The bearing of a sheet on corroded wall round the hole is doubtful: take the hole as wide as sound metal
 *   begins.
 * @see Timoshenko, Strength of Materials, Part II, circular plates
 */
export function backingPlatePressure(input: BackingPlatePressureInput): GaugePressure {
  const { holeDiameter: d, thickness: t, strength: S, factor: f, support, poissonRatio: nu } = input;
  positive(d, 'holeDiameter', 'm');
  positive(t, 'thickness', 'm');
  positive(S, 'strength', 'Pa');
  within(f, 1, 100, 'factor', '');
  const slenderness = d / (2 * t);
  const pressure = S / (plateStressFactor(support, nu) * f * slenderness * slenderness);
  positive(pressure, 'pressure', 'Pa');
  return pressure as GaugePressure;
}

export const backingPlatePressureFormula = /* @__PURE__ */ formula<BackingPlatePressureInput, GaugePressure>({
  id: 'seal/backing-plate-pressure',
  title: 'Pressure that a plate over a hole carries',
  search: ['patch'],
  compute: backingPlatePressure,
  equation: {
    branches: [
      { when: 'support == "clamped"', expression: 'S / (0.75 * f * (d / (2 * t))^2)' },
      { expression: 'S / (3 * (3 + nu) / 8 * f * (d / (2 * t))^2)' },
    ],
  },
  inputs: {
    holeDiameter: { symbol: 'd', kind: 'length', name: 'diameter of the hole under the plate', sample: [0.002, 0.06] },
    thickness: { symbol: 't', kind: 'length', name: 'thickness of the plate', sample: [3e-4, 0.006] },
    strength: {
      symbol: 'S',
      kind: 'stress',
      name: 'strength of the plate that the factor counts from',
      sample: [100e6, 1e9],
    },
    factor: { symbol: 'f', kind: 'number', name: 'factor on the strength of the plate', sample: [1, 4] },
    support: {
      symbol: 'support',
      kind: 'choice',
      name: 'how the edge of the hole holds the plate',
      choices: ['clamped', 'simply supported'],
    },
    poissonRatio: { symbol: 'nu', kind: 'number', name: "Poisson's ratio", sample: [0.2, 0.4] },
  },
  output: { symbol: 'p', kind: 'gauge pressure', name: 'pressure that the plate carries' },
  sources: [{ key: 'timoshenko', locator: 'circular plate, uniform pressure' }],
  evidence: { form: { tag: 'secondary', derived: 'finite differences of the plate equation' } },
  limits: [],
});

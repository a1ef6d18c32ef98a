import { finite, formula, nonNegative, positive, within } from '../../formula/index.js';
import type { GaugePressure, Length, Stress } from '../../quantity/index.js';
import { type PlateSupport, plateStressFactor } from './plate-stress-factor.js';

export interface BackingPlateThicknessInput {
  readonly pressure: GaugePressure;
  readonly holeDiameter: Length;
  readonly strength: Stress;
  readonly factor: number;
  readonly support: PlateSupport;
  readonly poissonRatio: number;
}

/**
 * Thickness of a flat plate that spans a round hole under pressure.
 *
 * $$t = \frac{d}{2}\sqrt{\frac{k f p}{S}}, \qquad k = \frac{3}{4}\ \text{or}\ \frac{3(3+\nu)}{8}$$
 *
 * @param input.pressure p, pressure under the plate [Pa], >= 0
 * @param input.holeDiameter d, diameter of the hole under the plate [m], > 0
 * @param input.strength S, strength of the plate that the factor counts from [Pa], > 0
 * @param input.factor f, factor on the strength of the plate, 1 or more; no default
 * @param input.support support, how the edge of the hole holds the plate, `clamped` or `simply supported`, the safe
 *   one
 * @param input.poissonRatio nu, Poisson's ratio, 0 to 0.5
 * @returns thickness of the plate [m]
 * @throws CalculationError `invalid-input`
 * @see Timoshenko, Strength of Materials, Part II, circular plates
 */
export function backingPlateThickness(input: BackingPlateThicknessInput): Length {
  const { pressure: p, holeDiameter: d, strength: S, factor: f, support, poissonRatio: nu } = input;
  nonNegative(p, 'pressure', 'Pa');
  positive(d, 'holeDiameter', 'm');
  positive(S, 'strength', 'Pa');
  within(f, 1, 100, 'factor', '');
  const thickness = (d / 2) * Math.sqrt((plateStressFactor(support, nu) * f * p) / S);
  finite(thickness, 'thickness', 'm');
  return thickness as Length;
}

export const backingPlateThicknessFormula = /* @__PURE__ */ formula<BackingPlateThicknessInput, Length>({
  id: 'seal/backing-plate-thickness',
  title: 'Thickness of a plate over a hole',
  search: ['patch', 'leak clamp'],
  compute: backingPlateThickness,
  equation: {
    branches: [
      { when: 'support == "clamped"', expression: 'd / 2 * sqrt(0.75 * f * p / S)' },
      { expression: 'd / 2 * sqrt(3 * (3 + nu) / 8 * f * p / S)' },
    ],
  },
  inputs: {
    pressure: { symbol: 'p', kind: 'gauge pressure', name: 'pressure under the plate', sample: [0, 10e6] },
    holeDiameter: { symbol: 'd', kind: 'length', name: 'diameter of the hole under the plate', sample: [0.002, 0.06] },
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
  output: { symbol: 't', kind: 'length', name: 'thickness of the plate' },
  sources: [{ key: 'timoshenko', locator: 'circular plate, uniform pressure' }],
  evidence: { form: { tag: 'secondary', derived: 'finite differences of the plate equation' } },
  limits: [],
});

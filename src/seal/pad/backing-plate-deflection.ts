import { finite, formula, nonNegative, oneOf, positive, within } from '../../formula/index.js';
import type { GaugePressure, Length, Modulus } from '../../quantity/index.js';
import { type PlateSupport, plateSupports } from './plate-stress-factor.js';

export interface BackingPlateDeflectionInput {
  readonly pressure: GaugePressure;
  readonly holeDiameter: Length;
  readonly thickness: Length;
  readonly modulus: Modulus;
  readonly support: PlateSupport;
  readonly poissonRatio: number;
}

/**
 * Deflection in the middle of a flat plate that spans a round hole under pressure.
 *
 * $$w_0 = \frac{p (d/2)^4}{64 B}, \qquad B = \frac{E t^3}{12 (1-\nu^2)}$$
 *
 * @param input.pressure p, pressure under the plate [Pa], >= 0
 * @param input.holeDiameter d, diameter of the hole under the plate [m], > 0
 * @param input.thickness t, thickness of the plate [m], > 0
 * @param input.modulus E, modulus of the plate [Pa], > 0
 * @param input.support support, how the edge of the hole holds the plate, `clamped` or `simply supported`, the safe
 *   one
 * @param input.poissonRatio nu, Poisson's ratio, 0 to 0.5
 * @returns deflection in the middle [m]
 * @throws CalculationError `invalid-input`
 * @remarks Simply supported: (5 + nu)/(1 + nu) times as much.
 * @see Timoshenko, Strength of Materials, Part II, circular plates
 */
export function backingPlateDeflection(input: BackingPlateDeflectionInput): Length {
  const { pressure: p, holeDiameter: d, thickness: t, modulus: E, support, poissonRatio: nu } = input;
  nonNegative(p, 'pressure', 'Pa');
  positive(d, 'holeDiameter', 'm');
  positive(t, 'thickness', 'm');
  positive(E, 'modulus', 'Pa');
  oneOf(support, plateSupports, 'support');
  within(nu, 0, 0.5, 'poissonRatio', '');
  const a = d / 2;
  const s = a / t;
  const clamped = (3 * (1 - nu * nu) * p * a * s * s * s) / (16 * E);
  const deflection = support === 'clamped' ? clamped : (clamped * (5 + nu)) / (1 + nu);
  finite(deflection, 'deflection', 'm');
  return deflection as Length;
}

/** Whether the plate sags by more than half its thickness, where the theory of small deflections ends. */
export function backingPlateDeflectionLarge(input: BackingPlateDeflectionInput): boolean {
  return backingPlateDeflection(input) > input.thickness / 2;
}

export const backingPlateDeflectionFormula = /* @__PURE__ */ formula<BackingPlateDeflectionInput, Length>({
  id: 'seal/backing-plate-deflection',
  title: 'Deflection of a plate over a hole',
  search: ['patch'],
  compute: backingPlateDeflection,
  equation: {
    where: [
      { symbol: 'a', kind: 'length', expression: 'd / 2' },
      { symbol: 'w_c', kind: 'length', expression: '3 * (1 - nu^2) * p * a^4 / (16 * E * t^3)' },
    ],
    branches: [{ when: 'support == "clamped"', expression: 'w_c' }, { expression: 'w_c * (5 + nu) / (1 + nu)' }],
  },
  inputs: {
    pressure: { symbol: 'p', kind: 'gauge pressure', name: 'pressure under the plate', sample: [0, 10e6] },
    holeDiameter: { symbol: 'd', kind: 'length', name: 'diameter of the hole under the plate', sample: [0.002, 0.06] },
    thickness: { symbol: 't', kind: 'length', name: 'thickness of the plate', sample: [3e-4, 0.006] },
    modulus: { symbol: 'E', kind: 'modulus', name: 'modulus of the plate', sample: [1e9, 210e9] },
    support: {
      symbol: 'support',
      kind: 'choice',
      name: 'how the edge of the hole holds the plate',
      choices: ['clamped', 'simply supported'],
    },
    poissonRatio: { symbol: 'nu', kind: 'number', name: "Poisson's ratio", sample: [0.2, 0.4] },
  },
  output: { symbol: 'w_0', kind: 'length', name: 'deflection in the middle' },
  sources: [{ key: 'timoshenko', locator: 'circular plate, uniform pressure' }],
  evidence: { form: { tag: 'secondary', derived: 'finite differences of the plate equation' } },
  limits: [
    {
      sort: 'note',
      text: 'Deflection over half the thickness: the plate hangs like a membrane, and bending alone overstates deflection and stress.',
      beyond: backingPlateDeflectionLarge,
    },
  ],
});

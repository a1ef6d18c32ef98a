import { formula, oneOf, positive } from '../../formula/index.js';
import type {
  ActivationEnergy,
  Density,
  Length,
  MolarHeatCapacity,
  RateConstant,
  Ratio,
  SpecificEnergy,
  Temperature,
  ThermalConductivity,
} from '../../quantity/index.js';

/** Shape of a lump of mixed resin that heats itself. */
export type LumpShape = 'slab' | 'cylinder' | 'sphere';

const LIMITS = { slab: 0.88, cylinder: 2, sphere: 3.32 } as const;

export interface RunawayParameterInput {
  readonly heatOfReaction: SpecificEnergy;
  readonly density: Density;
  readonly rateConstant: RateConstant;
  readonly activationEnergy: ActivationEnergy;
  readonly size: Length;
  readonly thermalConductivity: ThermalConductivity;
  readonly temperature: Temperature;
  readonly shape: LumpShape;
  readonly gasConstant?: MolarHeatCapacity | undefined;
}

/**
 * Heat made over heat conducted away in a lump of mix: above a limit by shape the lump runs away.
 *
 * $$\delta = \frac{H \rho k_0 E r^2}{\lambda R T_0^2}$$
 *
 * @param input.heatOfReaction H, heat of reaction per mass of resin [J/kg], > 0
 * @param input.density rho, density of the mix [kg/m3], > 0
 * @param input.rateConstant k_0, rate constant at the start [1/s], > 0
 * @param input.activationEnergy E, activation energy [J/mol], > 0
 * @param input.size r, radius, or half the thickness of a slab [m], > 0
 * @param input.thermalConductivity lambda, thermal conductivity of the mix [W/(m K)], > 0
 * @param input.temperature T_0, temperature at the start [K], > 0
 * @param input.shape shape, shape of the lump, slab, cylinder or sphere
 * @param input.gasConstant R, molar gas constant [J/(mol K)], > 0; 8.31446261815324 when not given
 * @returns parameter over the limit of the shape: 1 is the limit [1]
 * @throws CalculationError `invalid-input`
 * @remarks Limits 0.88 for a slab, 2.0 for a cylinder, 3.32 for a sphere. A warning, not a cure time.
 * @see Frank-Kamenetskii, as recalled
 */
export function runawayParameter(input: RunawayParameterInput): Ratio {
  const {
    heatOfReaction: H,
    density: rho,
    rateConstant: k0,
    activationEnergy: E,
    size: r,
    thermalConductivity: lambda,
    temperature: T0,
    shape,
    gasConstant: R = 8.31446261815324 as MolarHeatCapacity,
  } = input;
  positive(H, 'heatOfReaction', 'J/kg');
  positive(rho, 'density', 'kg/m3');
  positive(k0, 'rateConstant', '1/s');
  positive(E, 'activationEnergy', 'J/mol');
  positive(r, 'size', 'm');
  positive(lambda, 'thermalConductivity', 'W/(m K)');
  positive(T0, 'temperature', 'K');
  positive(R, 'gasConstant', 'J/(mol K)');
  oneOf(shape, ['slab', 'cylinder', 'sphere'], 'shape');
  const delta = (H * rho * k0 * E * r * r) / (lambda * R * T0 * T0);
  const part = delta / LIMITS[shape];
  positive(part, 'runawayParameter', '');
  return part as Ratio;
}

/** Whether the lump makes heat faster than it can conduct it away. */
export function runawayParameterBeyondCritical(input: RunawayParameterInput): boolean {
  return runawayParameter(input) >= 1;
}

export const runawayParameterFormula = /* @__PURE__ */ formula<RunawayParameterInput, Ratio>({
  id: 'resin/runaway-parameter',
  title: 'Frank-Kamenetskii parameter',
  search: ['exotherm', 'thermal explosion'],
  compute: runawayParameter,
  equation: {
    where: [{ symbol: 'delta', kind: 'number', expression: 'H * rho * k_0 * E * r^2 / (lambda * R * T_0^2)' }],
    branches: [
      { when: 'shape == "slab"', expression: 'delta / 0.88' },
      { when: 'shape == "cylinder"', expression: 'delta / 2' },
      { expression: 'delta / 3.32' },
    ],
  },
  inputs: {
    heatOfReaction: {
      symbol: 'H',
      kind: 'specific energy',
      name: 'heat of reaction per mass of resin',
      sample: [50000.0, 600000.0],
    },
    density: { symbol: 'rho', kind: 'density', name: 'density of the mix', sample: [900, 2000] },
    rateConstant: { symbol: 'k_0', kind: 'rate constant', name: 'rate constant at the start', sample: [1e-6, 0.001] },
    activationEnergy: { symbol: 'E', kind: 'activation energy', name: 'activation energy', sample: [30000.0, 90000.0] },
    size: { symbol: 'r', kind: 'length', name: 'radius, or half the thickness of a slab', sample: [0.005, 0.15] },
    thermalConductivity: {
      symbol: 'lambda',
      kind: 'thermal conductivity',
      name: 'thermal conductivity of the mix',
      sample: [0.15, 1],
    },
    temperature: { symbol: 'T_0', kind: 'temperature', name: 'temperature at the start', sample: [273.15, 323.15] },
    shape: { symbol: 'shape', kind: 'choice', name: 'shape of the lump', choices: ['slab', 'cylinder', 'sphere'] },
    gasConstant: {
      symbol: 'R',
      kind: 'molar heat capacity',
      name: 'molar gas constant',
      sample: [8.314, 8.3145],
      default: 8.31446261815324,
    },
  },
  output: { symbol: 'delta_c', kind: 'ratio', name: 'Frank-Kamenetskii parameter over its limit' },
  sources: [{ key: 'frank-kamenetskii', locator: 'critical values by shape' }],
  evidence: {
    form: { tag: 'recalled', derived: 'slab solved by shooting' },
    R: { tag: 'secondary' },
    limits: { tag: 'recalled' },
  },
  limits: [
    {
      sort: 'note',
      text: 'the lump makes heat faster than it can conduct it away and may run away; spread it thin',
      beyond: runawayParameterBeyondCritical,
    },
  ],
});

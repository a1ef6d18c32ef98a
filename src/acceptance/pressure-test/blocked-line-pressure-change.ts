import { below, finite, formula, nonNegative, positive, within } from '../../formula/index.js';
import type { GaugePressure, Length, Modulus, TemperatureDifference, ThermalExpansion } from '../../quantity/index.js';

export interface BlockedLinePressureChangeInput {
  readonly temperatureChange: TemperatureDifference;
  /** Expansion of the volume of the liquid at its temperature: of water 0.00021 per kelvin at 20 degC, none near 4 degC. */
  readonly liquidExpansion: ThermalExpansion;
  readonly bulkModulus?: Modulus | undefined;
  readonly outsideDiameter: Length;
  readonly wallThickness: Length;
  readonly modulus?: Modulus | undefined;
  readonly poissonRatio?: number | undefined;
  readonly pipeExpansion?: ThermalExpansion | undefined;
}

/**
 * Change of pressure in a blocked line full of any liquid, for a small change of temperature; the line is held along its axis.
 *
 * $$\Delta P = \frac{\left(\beta - 2 (1 + \nu) \alpha\right) \Delta T}{1/B + (D/t)(1 - \nu^2)/E}$$
 *
 * @param input.temperatureChange Delta T, warming above 0, cooling below [K]
 * @param input.liquidExpansion   beta, expansion of the liquid's volume [1/K]; may be below 0 in water under 4 degC
 * @param input.bulkModulus       B, bulk modulus of the liquid [Pa], > 0; 2.2e9, water, when not given
 * @param input.outsideDiameter   D [m], > 0
 * @param input.wallThickness     t [m], > 0 and < D/2
 * @param input.modulus           E, modulus of the pipe [Pa], > 0; 207e9 when not given
 * @param input.poissonRatio      nu, 0 to 0.5; 0.3 when not given
 * @param input.pipeExpansion     alpha, expansion of the steel along a line [1/K], >= 0; 11.7e-6 when not given
 * @returns change of pressure, below 0 where it falls [Pa]
 * @throws CalculationError `invalid-input`
 * @remarks Linear: for some kelvin only, with the expansion at the mean temperature. Give 1 K for the change per kelvin.
 */
export function blockedLinePressureChange(input: BlockedLinePressureChangeInput): GaugePressure {
  const { temperatureChange: dT, liquidExpansion: beta, outsideDiameter: D, wallThickness: t } = input;
  const { bulkModulus: B = 2.2e9 as Modulus, modulus: E = 207e9 as Modulus, poissonRatio: nu = 0.3 } = input;
  const { pipeExpansion: alpha = 11.7e-6 as ThermalExpansion } = input;
  finite(dT, 'temperatureChange', 'K');
  finite(beta, 'liquidExpansion', '1/K');
  positive(B, 'bulkModulus', 'Pa');
  positive(D, 'outsideDiameter', 'm');
  positive(t, 'wallThickness', 'm');
  below(t, D / 2, 'half the outside diameter', 'wallThickness', 'm');
  positive(E, 'modulus', 'Pa');
  within(nu, 0, 0.5, 'poissonRatio', '');
  nonNegative(alpha, 'pipeExpansion', '1/K');
  const dP = ((beta - 2 * (1 + nu) * alpha) * dT) / (1 / B + ((D / t) * (1 - nu * nu)) / E);
  finite(dP, 'change of pressure', 'Pa');
  return dP as GaugePressure;
}

/** Whether the change of temperature is too large for one expansion of water to hold over it. */
export function blockedLinePressureChangeBeyondOneStep(input: BlockedLinePressureChangeInput): boolean {
  return Math.abs(input.temperatureChange) > 5;
}

export const blockedLinePressureChangeFormula = /* @__PURE__ */ formula<BlockedLinePressureChangeInput, GaugePressure>({
  id: 'acceptance/blocked-line-pressure-change',
  title: 'Change of pressure in a blocked line for a small change of temperature',
  search: ['thermal expansion', 'trapped liquid'],
  compute: blockedLinePressureChange,
  equation: { expression: '(beta - 2 * (1 + nu) * alpha) * dT / (1 / B + D / t * (1 - nu^2) / E)' },
  inputs: {
    temperatureChange: { symbol: 'dT', kind: 'temperature difference', name: 'change of temperature', sample: [-5, 5] },
    liquidExpansion: {
      symbol: 'beta',
      kind: 'thermal expansion',
      name: 'expansion of the volume of the liquid',
      sample: [1e-4, 1e-3],
    },
    bulkModulus: {
      symbol: 'B',
      kind: 'modulus',
      name: 'bulk modulus of the liquid',
      sample: [1e9, 2.5e9],
      default: 2.2e9,
    },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.06, 1.2] },
    wallThickness: { symbol: 't', kind: 'length', name: 'wall thickness', sample: [0.002, 0.025] },
    modulus: { symbol: 'E', kind: 'modulus', name: 'modulus of the pipe', sample: [190e9, 215e9], default: 207e9 },
    poissonRatio: {
      symbol: 'nu',
      kind: 'number',
      name: "Poisson's ratio of the pipe",
      sample: [0.25, 0.35],
      default: 0.3,
    },
    pipeExpansion: {
      symbol: 'alpha',
      kind: 'thermal expansion',
      name: 'expansion of the steel along a line',
      sample: [1e-5, 1.8e-5],
      default: 11.7e-6,
    },
  },
  output: { symbol: 'dP', kind: 'gauge pressure', name: 'change of pressure' },
  sources: [],
  evidence: {
    form: {
      tag: 'chosen',
      derived: 'volume of the liquid against that of an elastic pipe held along its axis, by bisection',
    },
    bulkModulus: { tag: 'practice', note: 'water' },
    modulus: { tag: 'practice', note: 'carbon steel' },
    poissonRatio: { tag: 'practice', note: '0.3 for steel' },
    pipeExpansion: { tag: 'practice', note: 'carbon steel' },
    blockedLinePressureChangeBeyondOneStep: { tag: 'chosen' },
  },
  limits: [
    {
      sort: 'note',
      text: 'More than 5 K: take it in smaller steps, each with the expansion of its own temperature.',
      beyond: blockedLinePressureChangeBeyondOneStep,
    },
  ],
});

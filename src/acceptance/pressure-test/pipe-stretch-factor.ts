import { below, finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { GaugePressure, Length, Modulus, Ratio, Temperature, ThermalExpansion } from '../../quantity/index.js';

export interface PipeStretchFactorInput {
  readonly pressure: GaugePressure;
  readonly outsideDiameter: Length;
  readonly wallThickness: Length;
  readonly temperature: Temperature;
  readonly restraint?: number | undefined;
  readonly modulus?: Modulus | undefined;
  readonly expansion?: ThermalExpansion | undefined;
  readonly referenceTemperature?: Temperature | undefined;
}

/**
 * Volume of a pipe under pressure, over its volume without.
 *
 * $$F_{pp} = 1 + \frac{D}{t} \frac{k P}{E} + \alpha (T - T_0)$$
 *
 * @param input.pressure             P, test pressure [Pa], >= 0
 * @param input.outsideDiameter      D [m], > 0
 * @param input.wallThickness        t [m], > 0 and < D/2
 * @param input.temperature          T, temperature of the wall [K], > 0
 * @param input.restraint            k, 1 - nu^2 where the line is held along its axis, 5/4 - nu where its ends are free; 0.91
 *   when not given
 * @param input.modulus              E, modulus of the pipe [Pa], > 0; 30e6 psi when not given
 * @param input.expansion            alpha, share of the warming in this factor [1/K], >= 0; 3.6e-6 per degF when not given
 * @param input.referenceTemperature T_0 [K], > 0; 60 degF when not given
 * @returns factor [1], > 0
 * @throws CalculationError `invalid-input`
 * @remarks The handbook counts warming of the wall here and once more in its factor of the pipe's warming; the two add.
 * @see Pipeline Rules of Thumb Handbook, pp. 140 to 142
 */
export function pipeStretchFactor(input: PipeStretchFactorInput): Ratio {
  const { pressure: P, outsideDiameter: D, wallThickness: t, temperature: T, restraint: k = 0.91 } = input;
  const {
    modulus: E = 206842718795.05084 as Modulus,
    expansion: alpha = 0.00000648 as ThermalExpansion,
    referenceTemperature: T0 = 288.7055555555556 as Temperature,
  } = input;
  nonNegative(P, 'pressure', 'Pa');
  positive(D, 'outsideDiameter', 'm');
  positive(t, 'wallThickness', 'm');
  below(t, D / 2, 'half the outside diameter', 'wallThickness', 'm');
  positive(T, 'temperature', 'K');
  positive(k, 'restraint', '');
  positive(E, 'modulus', 'Pa');
  nonNegative(alpha, 'expansion', '1/K');
  positive(T0, 'referenceTemperature', 'K');
  const F = 1 + ((D / t) * k * P) / E + alpha * (T - T0);
  positive(F, 'stretch of the pipe', '');
  finite(F, 'stretch of the pipe', '');
  return F as Ratio;
}

export const pipeStretchFactorFormula = /* @__PURE__ */ formula<PipeStretchFactorInput, Ratio>({
  id: 'acceptance/pipe-stretch-factor',
  title: 'Stretch of the pipe under test',
  compute: pipeStretchFactor,
  equation: { expression: '1 + D / t * k * P / E + alpha * (T - T_0)' },
  inputs: {
    pressure: { symbol: 'P', kind: 'gauge pressure', name: 'test pressure', sample: [0, 30e6] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.06, 1.2] },
    wallThickness: { symbol: 't', kind: 'length', name: 'wall thickness', sample: [0.002, 0.025] },
    temperature: { symbol: 'T', kind: 'temperature', name: 'temperature of the wall', sample: [274, 311] },
    restraint: { symbol: 'k', kind: 'number', name: 'restraint', sample: [0.9, 1], default: 0.91 },
    modulus: {
      symbol: 'E',
      kind: 'modulus',
      name: 'modulus of the pipe',
      sample: [190e9, 215e9],
      default: 206842718795.05084,
    },
    expansion: {
      symbol: 'alpha',
      kind: 'thermal expansion',
      name: 'warming in this factor',
      sample: [0, 1e-5],
      default: 0.00000648,
    },
    referenceTemperature: {
      symbol: 'T_0',
      kind: 'temperature',
      name: 'reference temperature',
      sample: [285, 295],
      default: 288.7055555555556,
    },
  },
  output: { symbol: 'F_pp', kind: 'ratio', name: 'stretch factor of the pipe' },
  sources: [{ key: 'rules-of-thumb', locator: 'pp. 140 to 142' }],
  evidence: {
    form: { tag: 'published', derived: 'hoop strain of a pipe held along its axis, twice' },
    restraint: { tag: 'published', derived: '1 - nu^2 with nu 0.3' },
    modulus: { tag: 'published' },
    expansion: { tag: 'published', note: 'no derivation found; the warming of the pipe has a factor of its own' },
    referenceTemperature: { tag: 'published' },
  },
  limits: [],
});

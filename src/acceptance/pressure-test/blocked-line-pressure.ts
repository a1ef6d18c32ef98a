import { formula, refuse } from '../../formula/index.js';
import type { GaugePressure } from '../../quantity/index.js';
import { type BlockedLinePressureInput, pressureAfter } from './blocked-water.js';

export type { BlockedLinePressureInput } from './blocked-water.js';

/**
 * Pressure of a blocked line full of water after its temperature has changed: the water in it stays the same.
 *
 * $$\left(F_{wp} F_{pp} \frac{F_{pt}}{F_{wt}}\right)_1 = \left(F_{wp} F_{pp} \frac{F_{pt}}{F_{wt}}\right)_2$$
 *
 * @param input.pressure             P_1, pressure at the start [Pa], >= 0
 * @param input.startTemperature     T_1 [K], > 0
 * @param input.endTemperature       T_2 [K], > 0
 * @param input.startWaterFactor     F_1, volume factor of water at T_1 [1], > 0
 * @param input.endWaterFactor       F_2, volume factor of water at T_2 [1], > 0
 * @param input.outsideDiameter      D [m], > 0
 * @param input.wallThickness        t [m], > 0 and < D/2
 * @param input.compressibility      c, as in the compression factor; 4.5e-5 when not given
 * @param input.referencePressure    p_0, as in the compression factor [Pa]; 14.73 psi when not given
 * @param input.restraint            k, as in the stretch factor; 0.91 when not given
 * @param input.modulus              E, modulus of the pipe [Pa]; 30e6 psi when not given
 * @param input.stretchExpansion     alpha, as in the stretch factor [1/K]; 3.6e-6 per degF when not given
 * @param input.pipeExpansion        alpha_v, as in the warming factor [1/K]; 18.2e-6 per degF when not given
 * @param input.referenceTemperature T_0 [K]; 60 degF when not given
 * @returns pressure at T_2 [Pa]
 * @throws CalculationError `invalid-input`; `no-solution` where the pressure would fall to nothing and the water part
 * @remarks Temperature is that of the water, which lags behind the air. A line that warms may pass its highest pressure.
 * @see Pipeline Rules of Thumb Handbook, pp. 140 to 142
 */
export function blockedLinePressure(input: BlockedLinePressureInput): GaugePressure {
  const P2 = pressureAfter(input);
  if (P2 < 0) {
    refuse({
      code: 'no-solution',
      parameter: 'endTemperature',
      value: input.endTemperature,
      unit: 'K',
      constraint:
        'leaves no pressure in the line: the water parts and draws a vacuum; add water, or start at a higher pressure',
    });
  }
  return P2 as GaugePressure;
}

export const blockedLinePressureFormula = /* @__PURE__ */ formula<BlockedLinePressureInput, GaugePressure>({
  id: 'acceptance/blocked-line-pressure',
  title: 'Pressure of a blocked water-filled line at another temperature',
  search: ['thermal expansion', 'liquid full', 'trapped liquid'],
  compute: blockedLinePressure,
  equation: {
    where: [
      {
        symbol: 'M_1',
        kind: 'number',
        expression: '(1 + alpha * (T_1 - T_0) + D / t * k * P_1 / E) / (1 - c * P_1 / p_0)',
      },
      {
        symbol: 'M',
        kind: 'number',
        expression: 'M_1 * (1 + alpha_v * (T_1 - T_0)) / (1 + alpha_v * (T_2 - T_0)) * F_2 / F_1',
      },
    ],
    expression: '(M - 1 - alpha * (T_2 - T_0)) / (D / t * k / E + c * M / p_0)',
  },
  inputs: {
    pressure: { symbol: 'P_1', kind: 'gauge pressure', name: 'pressure at the start', sample: [3e6, 15e6] },
    startTemperature: { symbol: 'T_1', kind: 'temperature', name: 'temperature at the start', sample: [285, 300] },
    endTemperature: { symbol: 'T_2', kind: 'temperature', name: 'temperature at the end', sample: [285, 300] },
    startWaterFactor: {
      symbol: 'F_1',
      kind: 'ratio',
      name: 'volume factor of water at the start',
      sample: [0.9995, 1.0015],
    },
    endWaterFactor: {
      symbol: 'F_2',
      kind: 'ratio',
      name: 'volume factor of water at the end',
      sample: [0.9995, 1.0015],
    },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.06, 1.2] },
    wallThickness: { symbol: 't', kind: 'length', name: 'wall thickness', sample: [0.002, 0.025] },
    compressibility: {
      symbol: 'c',
      kind: 'ratio',
      name: 'loss of volume for each reference pressure',
      sample: [4e-5, 5e-5],
      default: 4.5e-5,
    },
    referencePressure: {
      symbol: 'p_0',
      kind: 'absolute pressure',
      name: 'reference pressure',
      sample: [95e3, 105e3],
      default: 101559.77492836995,
    },
    restraint: { symbol: 'k', kind: 'number', name: 'restraint', sample: [0.9, 1], default: 0.91 },
    modulus: {
      symbol: 'E',
      kind: 'modulus',
      name: 'modulus of the pipe',
      sample: [190e9, 215e9],
      default: 206842718795.05084,
    },
    stretchExpansion: {
      symbol: 'alpha',
      kind: 'thermal expansion',
      name: 'warming in the stretch factor',
      sample: [0, 1e-5],
      default: 0.00000648,
    },
    pipeExpansion: {
      symbol: 'alpha_v',
      kind: 'thermal expansion',
      name: 'expansion of the volume',
      sample: [2e-5, 5e-5],
      default: 0.00003276,
    },
    referenceTemperature: {
      symbol: 'T_0',
      kind: 'temperature',
      name: 'reference temperature',
      sample: [285, 295],
      default: 288.7055555555556,
    },
  },
  output: { symbol: 'P_2', kind: 'gauge pressure', name: 'pressure at the end' },
  sources: [{ key: 'rules-of-thumb', locator: 'pp. 140 to 142' }],
  evidence: {
    form: { tag: 'chosen', derived: 'bisection on the volumes at the two states', note: 'from the published factors' },
    factors: { tag: 'published' },
  },
  limits: [],
});

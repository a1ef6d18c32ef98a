import { finite, formula, nonNegative, positive, properFraction, refuse } from '../../formula/index.js';
import type { GaugePressure, Length, Ratio, Stress } from '../../quantity/index.js';
import { checkPipeWall } from '../remaining-strength/part-wall-defect.js';

export interface DnvPartAInput {
  readonly outsideDiameter: Length;
  readonly wallThickness: Length;
  readonly tensileStrength: Stress;
  readonly relativeDepth: Ratio;
  readonly depthDeviation: Ratio;
  readonly fractile: number;
  readonly defectLength: Length;
  readonly resistanceFactor: number;
  readonly depthFactor: number;
}

/**
 * Permissible pressure of a pipe with one measured metal loss by DNV-RP-F101, Part A (partial safety factors).
 *
 * $$p_{corr} = \gamma_m\,\frac{2 t f_u}{D - t}\,\frac{1 - \gamma_d x_d}{1 - \gamma_d x_d/Q},\qquad
 * x_d = x + \varepsilon_d\,\mathrm{StD},\qquad p_{corr} = 0\ \text{where}\ \gamma_d x_d \ge 1$$
 *
 * @param input.outsideDiameter   D [m], > 0
 * @param input.wallThickness     t [m], > 0 and < D/2
 * @param input.tensileStrength   f_u, of `dnvTensileStrength` [Pa], > 0
 * @param input.relativeDepth     x, measured depth over wall, 0 to 0.85
 * @param input.depthDeviation    StD, standard deviation of x, >= 0
 * @param input.fractile          eps_d, >= 0
 * @param input.defectLength      L, along the pipe [m], > 0
 * @param input.resistanceFactor  gamma_m, > 0
 * @param input.depthFactor       gamma_d, > 0
 * @returns permissible pressure [Pa]; 0 where the factored depth reaches through the wall
 * @throws CalculationError `invalid-input`; `outside-validity` for a depth over 0.85 of the wall
 * @remarks The three factors depend on safety class and inspection method and have no default.
 * @see DNV-RP-F101, Part A
 */
export function dnvPartA(input: DnvPartAInput): GaugePressure {
  const { outsideDiameter: D, wallThickness: t, tensileStrength: f, relativeDepth: x, defectLength: L } = input;
  const { depthDeviation: StD, fractile: eps, resistanceFactor: gammaM, depthFactor: gammaD } = input;
  checkPipeWall(D, t);
  positive(f, 'tensileStrength', 'Pa');
  properFraction(x, 'relativeDepth');
  if (x > 0.85) tooDeep(x);
  nonNegative(StD, 'depthDeviation', '');
  nonNegative(eps, 'fractile', '');
  positive(L, 'defectLength', 'm');
  positive(gammaM, 'resistanceFactor', '');
  positive(gammaD, 'depthFactor', '');
  const factored = gammaD * (x + eps * StD);
  if (factored >= 1) return 0 as GaugePressure;
  const Q = Math.sqrt(1 + 0.31 * ((L / D) * (L / t)));
  const pressure = (gammaM * f * ((2 * t) / (D - t)) * (1 - factored)) / (1 - factored / Q);
  finite(pressure, 'permissible pressure', 'Pa');
  return pressure as GaugePressure;
}

function tooDeep(value: number): never {
  const constraint = 'must be at most 0.85';
  refuse({ code: 'outside-validity', parameter: 'relativeDepth', value, unit: '', constraint, source: 'DNV-RP-F101' });
}

export const dnvPartAFormula = /* @__PURE__ */ formula<DnvPartAInput, GaugePressure>({
  id: 'pipe/dnv-part-a',
  title: 'Permissible pressure by DNV-RP-F101, Part A',
  search: ['corroded pipeline', 'allowable pressure', 'maop'],
  compute: dnvPartA,
  equation: {
    where: [
      { symbol: 'y', kind: 'number', expression: 'gamma_d * (x + eps_d * StD)' },
      { symbol: 'Q', kind: 'number', expression: 'sqrt(1 + 0.31 * L^2 / (D * t))' },
    ],
    branches: [
      { when: 'y < 1', expression: 'gamma_m * 2 * t * f_u / (D - t) * (1 - y) / (1 - y / Q)' },
      { expression: '0 * f_u' },
    ],
  },
  inputs: {
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.1, 1.2] },
    wallThickness: { symbol: 't', kind: 'length', name: 'wall thickness', sample: [0.005, 0.03] },
    tensileStrength: { symbol: 'f_u', kind: 'stress', name: 'tensile strength to be used', sample: [300e6, 800e6] },
    relativeDepth: { symbol: 'x', kind: 'ratio', name: 'measured depth over wall', sample: [0, 0.8] },
    depthDeviation: { symbol: 'StD', kind: 'ratio', name: 'standard deviation of depth over wall', sample: [0, 0.1] },
    fractile: { symbol: 'eps_d', kind: 'number', name: 'fractile of the depth', sample: [0, 2] },
    defectLength: { symbol: 'L', kind: 'length', name: 'length of the defect along the pipe', sample: [0.01, 1.2] },
    resistanceFactor: { symbol: 'gamma_m', kind: 'number', name: 'partial factor of the resistance', sample: [0.7, 1] },
    depthFactor: { symbol: 'gamma_d', kind: 'number', name: 'partial factor of the depth', sample: [1, 1.5] },
  },
  output: { symbol: 'p_corr', kind: 'gauge pressure', name: 'permissible pressure' },
  sources: [{ key: 'dnv-rp-f101', locator: 'Part A' }],
  evidence: { form: { tag: 'secondary' } },
  limits: [
    { sort: 'stop', text: 'Measured depth over 0.85 of the wall.', source: { key: 'dnv-rp-f101', locator: 'Part A' } },
  ],
});

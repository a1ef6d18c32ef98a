import { finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { Force, GaugePressure, Length, Moment, Stress } from '../../quantity/index.js';
import { checkPipeWall } from './part-wall-defect.js';
import { checkSafetyFactor } from './safe-pressure.js';

export interface AxialLossPressureInput {
  readonly failureStress: Stress;
  readonly safetyFactor: number;
  readonly outsideDiameter: Length;
  readonly wallThickness: Length;
  readonly axialForce?: Force;
  readonly bendingMoment?: Moment;
}

/**
 * Pressure whose end load, with the other loads along the pipe, brings a metal loss to its factored axial failure stress.
 *
 * $$P = \max\left(0,\ \left(\frac{\sigma_c}{\mathrm{SF}} - \frac{\max(F, 0)}{\pi D t} - \frac{4 M}{\pi D^2 t}\right)\frac{4 t}{D}\right)$$
 *
 * @param input.failureStress    sigma_c, of the sound section [Pa], > 0
 * @param input.safetyFactor     SF, >= 1
 * @param input.outsideDiameter  D [m], > 0
 * @param input.wallThickness    t, of the sound section [m], > 0 and < D/2
 * @param input.axialForce       F, tension beside that of the pressure [N]; a push counts as none. 0 by default
 * @param input.bendingMoment    M [N m], >= 0; 0 by default
 * @returns pressure [Pa]; 0 where the other loads alone reach the factored stress
 * @throws CalculationError `invalid-input`
 * @remarks On the outside diameter, closed ends. A push may cease, so it earns nothing.
 */
export function axialLossPressure(input: AxialLossPressureInput): GaugePressure {
  const { failureStress, safetyFactor, outsideDiameter: D, wallThickness: t } = input;
  const { axialForce: F = 0, bendingMoment: M = 0 } = input;
  positive(failureStress, 'failureStress', 'Pa');
  checkSafetyFactor(safetyFactor);
  checkPipeWall(D, t);
  finite(F, 'axialForce', 'N');
  nonNegative(M, 'bendingMoment', 'N m');
  const other = Math.max(F, 0) / (Math.PI * D * t) + (4 * M) / (Math.PI * D * D * t);
  const pressure = Math.max(0, ((failureStress - safetyFactor * other) * ((4 * t) / D)) / safetyFactor);
  finite(pressure, 'pressure', 'Pa');
  return pressure as GaugePressure;
}

export const axialLossPressureFormula = /* @__PURE__ */ formula<AxialLossPressureInput, GaugePressure>({
  id: 'pipe/axial-loss-pressure',
  title: 'Pressure that a metal loss carries along the pipe',
  search: ['end load', 'circumferential corrosion'],
  compute: axialLossPressure,
  equation: {
    where: [
      { symbol: 'F_t', kind: 'force', expression: 'max(F, 0 * F)' },
      {
        symbol: 'P_x',
        kind: 'gauge pressure',
        expression: '(sigma_c / SF - F_t / (pi * D * t) - 4 * M / (pi * D^2 * t)) * 4 * t / D',
      },
    ],
    expression: 'max(P_x, 0 * P_x)',
  },
  inputs: {
    failureStress: { symbol: 'sigma_c', kind: 'stress', name: 'axial stress at failure', sample: [50e6, 600e6] },
    safetyFactor: { symbol: 'SF', kind: 'number', name: 'safety factor', sample: [1, 3] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.1, 1.2] },
    wallThickness: { symbol: 't', kind: 'length', name: 'wall thickness', sample: [0.005, 0.03] },
    axialForce: { symbol: 'F', kind: 'force', name: 'tension along the pipe', sample: [-1e5, 1e5], default: 0 },
    bendingMoment: { symbol: 'M', kind: 'moment', name: 'bending moment', sample: [0, 1e4], default: 0 },
  },
  output: { symbol: 'P_ax', kind: 'gauge pressure', name: 'pressure along the pipe' },
  sources: [],
  evidence: {
    form: { tag: 'chosen', derived: 'force balance over a cut round the pipe, thin wall on the outside diameter' },
  },
  limits: [],
});

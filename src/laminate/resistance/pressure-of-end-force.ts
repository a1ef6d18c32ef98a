import { finite, formula, nonNegative, positive, refuse } from '../../formula/index.js';
import type { Force, GaugePressure, Length } from '../../quantity/index.js';

export interface PressureOfEndForceInput {
  readonly axialForce: Force;
  readonly outsideDiameter: Length;
  readonly externalForce: Force;
}

/**
 * Pressure in a closed pipe whose end load, with an external force, makes up an axial force.
 *
 * $$P = \frac{4 (F - F_{ax})}{\pi D^2}$$
 *
 * @param input.axialForce      F, that the pipe or the laminate holds [N], >= 0
 * @param input.outsideDiameter D [m], > 0
 * @param input.externalForce   F_ax, part of F that is there without pressure [N], >= 0 and at most F
 * @returns pressure [Pa]
 * @throws CalculationError `invalid-input`; `no-solution` when the external force alone is more than F
 */
export function pressureOfEndForce(input: PressureOfEndForceInput): GaugePressure {
  const { axialForce: F, outsideDiameter: D, externalForce: Fax } = input;
  nonNegative(F, 'axialForce', 'N');
  positive(D, 'outsideDiameter', 'm');
  nonNegative(Fax, 'externalForce', 'N');
  if (Fax > F) {
    const constraint = 'must be at most the force that is held, {limit}';
    refuse({ code: 'no-solution', parameter: 'externalForce', value: Fax, unit: 'N', constraint, limit: F });
  }
  const P = (4 * (F - Fax)) / (Math.PI * D * D);
  finite(P, 'pressure', 'Pa');
  return P as GaugePressure;
}

export const pressureOfEndForceFormula = /* @__PURE__ */ formula<PressureOfEndForceInput, GaugePressure>({
  id: 'laminate/pressure-of-end-force',
  title: 'Pressure that an axial force amounts to',
  compute: pressureOfEndForce,
  equation: { expression: '4 * (F - F_ax) / (pi * D^2)' },
  inputs: {
    axialForce: { symbol: 'F', kind: 'force', name: 'axial force that is held', sample: [50e3, 2e6] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.06, 1.2] },
    externalForce: { symbol: 'F_ax', kind: 'force', name: 'external axial force', sample: [0, 200e3], usual: [0, 5e6] },
  },
  output: { symbol: 'P', kind: 'gauge pressure', name: 'pressure' },
  sources: [],
  evidence: { form: { tag: 'practice', derived: 'force balance over the closed end' } },
  limits: [],
});

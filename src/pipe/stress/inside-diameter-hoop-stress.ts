import { finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { GaugePressure, Length, Stress } from '../../quantity/index.js';

export interface InsideDiameterHoopStressInput {
  readonly pressure: GaugePressure;
  readonly insideDiameter: Length;
  readonly wallThickness: Length;
}

/**
 * Average hoop stress over the wall of a pipe under internal pressure, on the inside diameter.
 *
 *$$\sigma_h = \frac{P d_i}{2 t}$$
 *
 * @param input.pressure        P, internal gauge pressure [Pa], >= 0
 * @param input.insideDiameter  d_i, bore [m], > 0
 * @param input.wallThickness   t [m], > 0
 * @returns hoop stress [Pa]
 * @throws CalculationError `invalid-input`
 * @remarks The exact average over the wall for any thickness. The stress at the bore of an elastic pipe is higher.
 * @see force balance over a cut along the pipe
 */
export function insideDiameterHoopStress(input: InsideDiameterHoopStressInput): Stress {
  const { pressure: P, insideDiameter: d, wallThickness: t } = input;
  nonNegative(P, 'pressure', 'Pa');
  positive(d, 'insideDiameter', 'm');
  positive(t, 'wallThickness', 'm');
  const stress = (P * d) / (2 * t);
  finite(stress, 'hoop stress', 'Pa');
  return stress as Stress;
}

export const insideDiameterHoopStressFormula = /* @__PURE__ */ formula<InsideDiameterHoopStressInput, Stress>({
  id: 'pipe/inside-diameter-hoop-stress',
  title: 'Hoop stress on the inside diameter',
  search: ['barlow'],
  compute: insideDiameterHoopStress,
  equation: { expression: 'P * d_i / (2 * t)' },
  inputs: {
    pressure: { symbol: 'P', kind: 'gauge pressure', name: 'internal pressure', sample: [0, 30e6] },
    insideDiameter: { symbol: 'd_i', kind: 'length', name: 'inside diameter', sample: [0.015, 1.2] },
    wallThickness: { symbol: 't', kind: 'length', name: 'wall thickness', sample: [0.001, 0.04] },
  },
  output: { symbol: 'sigma_h', kind: 'stress', name: 'hoop stress' },
  sources: [{ key: 'mechanics-notes', locator: 'thin cylinder' }],
  evidence: { form: { tag: 'secondary', derived: 'mean of the thick-cylinder hoop stress over the wall' } },
  limits: [],
});

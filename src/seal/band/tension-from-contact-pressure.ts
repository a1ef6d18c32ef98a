import { finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { Force, GaugePressure, Length } from '../../quantity/index.js';

export interface TensionFromContactPressureInput {
  readonly pressure: GaugePressure;
  readonly diameter: Length;
  readonly bandWidth: Length;
}

/**
 * Tension at which a band presses with a given pressure.
 *
 * $$T = \frac{q D w}{2}$$
 *
 * @param input.pressure q, contact pressure under the band [Pa], >= 0
 * @param input.diameter D, diameter of the surface under the band [m], > 0
 * @param input.bandWidth w, width of the band [m], > 0
 * @returns tension in the band [N]
 * @throws CalculationError `invalid-input`
 * @remarks The inverse of the contact pressure: what the pipe under the band allows at the fastener.
 * @see Bhandari, Design of Machine Elements, band brakes, as recalled
 */
export function tensionFromContactPressure(input: TensionFromContactPressureInput): Force {
  const { pressure: q, diameter: D, bandWidth: w } = input;
  nonNegative(q, 'pressure', 'Pa');
  positive(D, 'diameter', 'm');
  positive(w, 'bandWidth', 'm');
  const tension = (q * D * w) / 2;
  finite(tension, 'tension', 'N');
  return tension as Force;
}

export const tensionFromContactPressureFormula = /* @__PURE__ */ formula<TensionFromContactPressureInput, Force>({
  id: 'seal/tension-from-contact-pressure',
  title: 'Band tension from contact pressure',
  compute: tensionFromContactPressure,
  equation: { expression: 'q * D * w / 2' },
  inputs: {
    pressure: { symbol: 'q', kind: 'gauge pressure', name: 'contact pressure under the band', sample: [10e3, 20e6] },
    diameter: { symbol: 'D', kind: 'length', name: 'diameter of the surface under the band', sample: [0.05, 1.2] },
    bandWidth: { symbol: 'w', kind: 'length', name: 'width of the band', sample: [0.005, 0.1] },
  },
  output: { symbol: 'T', kind: 'force', name: 'tension in the band' },
  sources: [{ key: 'bhandari', locator: 'band brakes' }],
  evidence: { form: { tag: 'recalled', derived: 'force balance over half a ring' } },
  limits: [],
});

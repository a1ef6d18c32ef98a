import { finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { Force, GaugePressure, Length } from '../../quantity/index.js';

export interface ContactPressureInput {
  readonly tension: Force;
  readonly diameter: Length;
  readonly bandWidth: Length;
}

/**
 * Pressure of a tensioned band on what it lies on.
 *
 * $$q = \frac{T}{R w} = \frac{2 T}{D w}$$
 *
 * @param input.tension T, tension in the band at this place [N], >= 0
 * @param input.diameter D, diameter of the surface under the band [m], > 0
 * @param input.bandWidth w, width of the band [m], > 0
 * @returns contact pressure under the band [Pa]
 * @throws CalculationError `invalid-input`
 * @see Bhandari, Design of Machine Elements, band brakes, as recalled
 */
export function contactPressure(input: ContactPressureInput): GaugePressure {
  const { tension: T, diameter: D, bandWidth: w } = input;
  nonNegative(T, 'tension', 'N');
  positive(D, 'diameter', 'm');
  positive(w, 'bandWidth', 'm');
  const pressure = (2 * T) / (D * w);
  finite(pressure, 'contact pressure', 'Pa');
  return pressure as GaugePressure;
}

export const contactPressureFormula = /* @__PURE__ */ formula<ContactPressureInput, GaugePressure>({
  id: 'seal/contact-pressure',
  title: 'Contact pressure under a band',
  search: ['leak clamp', 'strap', 'gasket'],
  compute: contactPressure,
  equation: { expression: '2 * T / (D * w)' },
  inputs: {
    tension: { symbol: 'T', kind: 'force', name: 'tension in the band at this place', sample: [10, 50e3] },
    diameter: { symbol: 'D', kind: 'length', name: 'diameter of the surface under the band', sample: [0.05, 1.2] },
    bandWidth: { symbol: 'w', kind: 'length', name: 'width of the band', sample: [0.005, 0.1] },
  },
  output: { symbol: 'q', kind: 'gauge pressure', name: 'contact pressure under the band' },
  sources: [{ key: 'bhandari', locator: 'band brakes' }],
  evidence: { form: { tag: 'recalled', derived: 'force balance over half a ring' } },
  limits: [],
});

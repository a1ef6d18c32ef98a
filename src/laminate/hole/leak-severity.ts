import { finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { GaugePressure, LeakSeverity, Length } from '../../quantity/index.js';

export interface LeakSeverityInput {
  readonly pressure: GaugePressure;
  readonly holeDiameter: Length;
}

/**
 * Screening figure for a leak: pressure times the square root of the hole diameter.
 *
 * $$S = P \sqrt{d}$$
 *
 * @param input.pressure      P, design pressure [Pa], >= 0
 * @param input.holeDiameter  d [m], > 0
 * @returns leak severity [Pa m^(1/2)]
 * @throws CalculationError `invalid-input`
 * @remarks The limit is printed as 150 psi in^(1/2) and as 0.16 MN/m^(3/2), which is 3 % tighter.
 * @see ASME PCC-2, 401-1.1, from an excerpt
 */
export function leakSeverity(input: LeakSeverityInput): LeakSeverity {
  const { pressure: P, holeDiameter: d } = input;
  nonNegative(P, 'pressure', 'Pa');
  positive(d, 'holeDiameter', 'm');
  const severity = P * Math.sqrt(d);
  finite(severity, 'leak severity', 'Pa m^(1/2)');
  return severity as LeakSeverity;
}

export const leakSeverityFormula = /* @__PURE__ */ formula<LeakSeverityInput, LeakSeverity>({
  id: 'laminate/leak-severity',
  title: 'Leak severity',
  search: ['pinhole', 'toughness'],
  compute: leakSeverity,
  equation: { expression: 'P * sqrt(d)' },
  inputs: {
    pressure: { symbol: 'P', kind: 'gauge pressure', name: 'design pressure', sample: [0, 20e6] },
    holeDiameter: { symbol: 'd', kind: 'length', name: 'hole diameter', sample: [0.001, 0.1] },
  },
  output: { symbol: 'S_leak', kind: 'leak severity', name: 'leak severity' },
  sources: [{ key: 'asme-pcc-2', locator: '401-1.1, excerpt' }],
  evidence: { form: { tag: 'secondary', note: 'the root is restored from the unit' } },
  limits: [],
});

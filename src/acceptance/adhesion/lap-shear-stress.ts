import { finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { Force, Length, Stress } from '../../quantity/index.js';

export interface LapShearStressInput {
  readonly force: Force;
  readonly width: Length;
  readonly overlap: Length;
}

/**
 * Mean shear stress at which a lap joint broke.
 *
 * $$\tau = \frac{F}{w l}$$
 *
 * @param input.force   F, force at break [N], >= 0
 * @param input.width   w, width of the joint [m], > 0
 * @param input.overlap l, length of the overlap [m], > 0
 * @returns shear stress, averaged over the overlap [Pa]
 * @throws CalculationError `invalid-input`
 * @remarks The stress peaks at both ends of the overlap, so joints of other lengths do not compare. Five pieces or more.
 * @see EN 1465
 */
export function lapShearStress(input: LapShearStressInput): Stress {
  const { force: F, width: w, overlap: l } = input;
  nonNegative(F, 'force', 'N');
  positive(w, 'width', 'm');
  positive(l, 'overlap', 'm');
  const tau = F / (w * l);
  finite(tau, 'lap shear stress', 'Pa');
  return tau as Stress;
}

export const lapShearStressFormula = /* @__PURE__ */ formula<LapShearStressInput, Stress>({
  id: 'acceptance/lap-shear-stress',
  title: 'Lap shear stress at break',
  search: ['bond test', 'adhesive test'],
  compute: lapShearStress,
  equation: { expression: 'F / (w * l)' },
  inputs: {
    force: { symbol: 'F', kind: 'force', name: 'force at break', sample: [0, 15000] },
    width: { symbol: 'w', kind: 'length', name: 'width of the joint', sample: [0.02, 0.03] },
    overlap: { symbol: 'l', kind: 'length', name: 'length of the overlap', sample: [0.01, 0.03] },
  },
  output: { symbol: 'tau', kind: 'stress', name: 'lap shear stress' },
  sources: [{ key: 'en-1465', locator: 'expression of results' }],
  evidence: { form: { tag: 'recalled', derived: 'force over the area of the overlap' } },
  limits: [],
});

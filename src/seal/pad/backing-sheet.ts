import { finite, formula, positive } from '../../formula/index.js';
import { stripBendingStress } from '../../mechanics/index.js';
import type { Length, Modulus, Ratio, Stress } from '../../quantity/index.js';
import { sealPractice } from '../practice.js';

/** Elastic stress of the bent sheet, its share of yield, and how the sheet must be formed. */
export interface BackingSheet {
  readonly stress: Stress;
  readonly yieldShare: Ratio;
  readonly forming: 'elastic' | 'pre-roll';
}

export interface BackingSheetInput {
  readonly thickness: Length;
  readonly modulus: Modulus;
  readonly yieldStrength: Stress;
  readonly diameter: Length;
}

/**
 * Stress of a flat backing sheet that a band bends on the pipe, and whether it must be rolled to the radius first.
 *
 * $$\sigma_b = \frac{E t}{D + t}$$
 *
 * @param input.thickness t, thickness of the sheet [m], > 0
 * @param input.modulus E, modulus of the sheet [Pa], > 0
 * @param input.yieldStrength S_y, yield strength of the sheet [Pa], > 0
 * @param input.diameter D, diameter of the surface under the sheet [m], > 0
 * @returns elastic stress [Pa], its share of yield, and `elastic` or `pre-roll`
 * @throws CalculationError `invalid-input`
 * @remarks Above yield the sheet bends unevenly and springs part of the way back: roll it to the radius first. A
 *   steel sheet of 1 mm on a 168.3 mm pipe would reach 1180 MPa. Below yield it lies on while the band holds it,
 *   and springs flat when the band goes.
 * @see Gere, Mechanics of Materials, problems 5.4-1 and 5.5-2
 */
export function backingSheet(input: BackingSheetInput): BackingSheet {
  const { thickness: t, modulus: E, yieldStrength: Sy, diameter: D } = input;
  positive(Sy, 'yieldStrength', 'Pa');
  positive(D, 'diameter', 'm');
  const stress = stripBendingStress({ modulus: E, thickness: t, radius: (D / 2) as Length });
  const yieldShare = stress / Sy;
  finite(yieldShare, 'stress over yield strength', '');
  return { stress, yieldShare: yieldShare as Ratio, forming: yieldShare > 1 ? 'pre-roll' : 'elastic' };
}

/** Whether the sheet is thinner or thicker than those that the trade uses. */
export function backingSheetOutsidePractice(input: BackingSheetInput): boolean {
  const [least, most] = sealPractice.sheetThickness;
  return input.thickness < least || input.thickness > most;
}

export const backingSheetFormula = /* @__PURE__ */ formula<BackingSheetInput, BackingSheet>({
  id: 'seal/backing-sheet',
  title: 'Backing sheet bent on the pipe',
  search: ['shim', 'spring back', 'sheet over putty'],
  compute: backingSheet,
  equation: { expression: 'E * t / (D + t)' },
  inputs: {
    thickness: { symbol: 't', kind: 'length', name: 'thickness of the sheet', sample: [2e-4, 0.003] },
    modulus: { symbol: 'E', kind: 'modulus', name: 'modulus of the sheet', sample: [50e9, 210e9] },
    yieldStrength: { symbol: 'S_y', kind: 'stress', name: 'yield strength of the sheet', sample: [100e6, 1.2e9] },
    diameter: { symbol: 'D', kind: 'length', name: 'diameter of the surface under the sheet', sample: [0.05, 1.2] },
  },
  output: {
    stress: { symbol: 'sigma_b', kind: 'stress', name: 'elastic stress of the bent sheet' },
    yieldShare: { symbol: 'x', kind: 'ratio', name: 'stress over yield strength' },
    forming: { symbol: 'forming', kind: 'choice', name: 'how the sheet goes on' },
  },
  sources: [{ key: 'gere', locator: 'problems 5.4-1 and 5.5-2' }],
  evidence: { form: { tag: 'secondary', derived: 'modulus times the strain of the outer fibre' } },
  limits: [
    {
      sort: 'note',
      text: 'Common practice: stainless steel sheet of 0.3 to 0.4 mm under the band.',
      beyond: backingSheetOutsidePractice,
    },
  ],
});

import { below, formula, nonNegative, positive } from '../formula/index.js';
import type { Length } from '../quantity/index.js';

export interface LengthOnRollInput {
  readonly rollDiameter: Length;
  readonly coreDiameter: Length;
  readonly sheetThickness: Length;
}

/**
 * Length of sheet or tape left on a roll, from its outside and core diameter.
 *
 * $$L = \frac{\pi (D^2 - d^2)}{4 t}$$
 *
 * @param input.rollDiameter D, outside diameter of the roll [m], > 0
 * @param input.coreDiameter d, diameter of the core [m], >= 0 and < D
 * @param input.sheetThickness t, thickness of the sheet on the roll [m], > 0
 * @returns length on the roll [m]
 * @throws CalculationError `invalid-input`
 * @remarks The thickness is that on the roll, with what lies between the turns.
 * @see worked examples of roll length on public web pages
 */
export function lengthOnRoll(input: LengthOnRollInput): Length {
  const { rollDiameter: D, coreDiameter: d, sheetThickness: t } = input;
  positive(D, 'rollDiameter', 'm');
  nonNegative(d, 'coreDiameter', 'm');
  positive(t, 'sheetThickness', 'm');
  below(d, D, 'the diameter of the roll', 'coreDiameter', 'm');
  const L = (Math.PI * (D - d) * (D + d)) / (4 * t);
  positive(L, 'lengthOnRoll', 'm');
  return L as Length;
}

export const lengthOnRollFormula = /* @__PURE__ */ formula<LengthOnRollInput, Length>({
  id: 'wrap/length-on-roll',
  title: 'Length of sheet on a roll',
  compute: lengthOnRoll,
  equation: { expression: 'pi * (D - d) * (D + d) / (4 * t)' },
  inputs: {
    rollDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter of the roll', sample: [0.1, 0.6] },
    coreDiameter: { symbol: 'd', kind: 'length', name: 'diameter of the core', sample: [0.02, 0.2] },
    sheetThickness: {
      symbol: 't',
      kind: 'length',
      name: 'thickness of the sheet on the roll',
      sample: [0.0001, 0.003],
    },
  },
  output: { symbol: 'L', kind: 'length', name: 'length on the roll' },
  sources: [{ key: 'web-wrap-examples', locator: 'roll of 5 in on a 2 in core' }],
  evidence: { form: { tag: 'secondary', derived: 'sum of circles' } },
  limits: [],
});

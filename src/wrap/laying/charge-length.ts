import { finite, formula, positive, wholeNumber } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';

export interface ChargeLengthInput {
  readonly length: Length;
  readonly charges: number;
}

/**
 * Tape or sheet that one of several equal charges of resin wets.
 *
 * $$l = \frac{L}{n}$$
 *
 * @param input.length L, tape or sheet of the whole wrap [m], > 0
 * @param input.charges n, equal batches of resin, whole, 1 or above
 * @returns tape or sheet to a batch [m]
 * @throws CalculationError `invalid-input`
 */
export function chargeLength(input: ChargeLengthInput): Length {
  const { length: L, charges: n } = input;
  positive(L, 'length', 'm');
  wholeNumber(n, 1, 'charges');
  const l = L / n;
  finite(l, 'charge length', 'm');
  return l as Length;
}

export const chargeLengthFormula = /* @__PURE__ */ formula<ChargeLengthInput, Length>({
  id: 'wrap/charge-length',
  title: 'Tape or sheet to a batch of resin',
  compute: chargeLength,
  equation: { expression: 'L / n' },
  inputs: {
    length: { symbol: 'L', kind: 'length', name: 'tape or sheet of the whole wrap', sample: [1, 500] },
    charges: { symbol: 'n', kind: 'count', name: 'equal batches of resin', sample: [1, 20] },
  },
  output: { symbol: 'l', kind: 'length', name: 'tape or sheet to a batch' },
  sources: [],
  evidence: { form: { tag: 'chosen' } },
  limits: [],
});

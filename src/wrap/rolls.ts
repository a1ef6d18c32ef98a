import { formula, nonNegative, positive, wholeNumber } from '../formula/index.js';
import { countUp } from '../numeric/index.js';
import type { Length, Ratio } from '../quantity/index.js';

export interface Rolls {
  readonly rolls: number;
  readonly lengthWithWaste: Length;
  readonly leftOnLastRoll: Length;
}

export interface RollsInput {
  readonly length: Length;
  readonly rollLength: Length;
  readonly waste?: Ratio | undefined;
}

/**
 * Rolls of tape or sheet to order, with waste, and what is left on the last one.
 *
 * $$N = \left\lceil \frac{L (1 + \omega)}{L_r} \right\rceil$$
 *
 * @param input.length L, length that the wrap takes [m], > 0
 * @param input.rollLength L_r, length of one roll [m], > 0
 * @param input.waste omega, waste as a part of the length [1], >= 0; 0.1 when not given
 * @returns rolls, the length drawn with waste, and the length left on the last roll
 * @throws CalculationError `invalid-input`
 * @remarks Waste covers the 150 mm laps where one roll follows another; on short rolls check that it does.
 * @see note on tape practice, for the 10 per cent of waste
 */
export function rolls(input: RollsInput): Rolls {
  const { length: L, rollLength: Lr, waste: omega = 0.1 as Ratio } = input;
  positive(L, 'length', 'm');
  positive(Lr, 'rollLength', 'm');
  nonNegative(omega, 'waste', '');
  const lengthWithWaste = L * (1 + omega);
  const n = countUp(lengthWithWaste / Lr);
  wholeNumber(n, 1, 'rolls');
  // Below the slack of the count the last roll may come out short by a billionth: that is nothing left, not less.
  const leftOnLastRoll = Math.max(0, n * Lr - lengthWithWaste);
  return { rolls: n, lengthWithWaste: lengthWithWaste as Length, leftOnLastRoll: leftOnLastRoll as Length };
}

export const rollsFormula = /* @__PURE__ */ formula<RollsInput, Rolls>({
  id: 'wrap/rolls',
  title: 'Rolls to order',
  search: ['how many rolls', 'material takeoff', 'tape order'],
  compute: rolls,
  equation: {
    expression: 'ceil(q - 1e-9 * max(1, q))',
    where: [{ symbol: 'q', kind: 'number', expression: 'L * (1 + omega) / L_r' }],
  },
  inputs: {
    length: { symbol: 'L', kind: 'length', name: 'length that the wrap takes', sample: [1, 500] },
    rollLength: { symbol: 'L_r', kind: 'length', name: 'length of one roll', sample: [3, 60] },
    waste: { symbol: 'omega', kind: 'ratio', name: 'waste as a part of the length', sample: [0, 0.3], default: 0.1 },
  },
  output: {
    rolls: { symbol: 'N', kind: 'count', name: 'rolls' },
    lengthWithWaste: { symbol: 'L_w', kind: 'length', name: 'length with waste' },
    leftOnLastRoll: { symbol: 'L_l', kind: 'length', name: 'length left on the last roll' },
  },
  sources: [{ key: 'tape-practice-note', locator: '10 % waste' }],
  evidence: { form: { tag: 'chosen', derived: 'rolls used up one by one' }, waste: { tag: 'secondary' } },
  limits: [],
});

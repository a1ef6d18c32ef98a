import { finite, formula, nonNegative, properFraction } from '../../formula/index.js';
import type { Length, Ratio } from '../../quantity/index.js';

export interface OrderWallInput {
  readonly designThickness: Length;
  readonly allowance?: Length | undefined;
  readonly underTolerance?: Ratio | undefined;
}

/**
 * Nominal wall to order: the design thickness and its allowances, before the under-tolerance of the mill.
 *
 *$$t_{nom} = \frac{t + c}{1 - u}$$
 *
 * @param input.designThickness  t [m], >= 0
 * @param input.allowance        c, corrosion, thread and groove allowances [m], >= 0; 0 when left out
 * @param input.underTolerance   u, from 0 up to, not including, 1; 12.5 % when left out (seamless and ERW)
 * @returns least nominal wall [m]; order the next schedule at or above it
 * @throws CalculationError `invalid-input`
 * @remarks Divide by 1 - u: multiplying by 1 + u, a common mistake, leaves the wall 1.6 % short at 12.5 %.
 * @see ASME B31.3, 304.1.1
 */
export function orderWall(input: OrderWallInput): Length {
  const { designThickness: t, allowance: c = 0, underTolerance: u = 0.125 } = input;
  nonNegative(t, 'designThickness', 'm');
  nonNegative(c, 'allowance', 'm');
  properFraction(u, 'underTolerance');
  const wall = (t + c) / (1 - u);
  finite(wall, 'order wall', 'm');
  return wall as Length;
}

export const orderWallFormula = /* @__PURE__ */ formula<OrderWallInput, Length>({
  id: 'pipe/order-wall',
  title: 'Nominal wall to order',
  search: ['mill tolerance', 'corrosion allowance', 'schedule'],
  compute: orderWall,
  equation: { expression: '(t + c) / (1 - u)' },
  inputs: {
    designThickness: { symbol: 't', kind: 'length', name: 'pressure design thickness', sample: [0.0005, 0.04] },
    allowance: { symbol: 'c', kind: 'length', name: 'sum of the allowances', sample: [0, 0.006], default: 0 },
    underTolerance: { symbol: 'u', kind: 'ratio', name: 'mill under-tolerance', sample: [0, 0.2], default: 0.125 },
  },
  output: { symbol: 't_nom', kind: 'length', name: 'nominal wall' },
  sources: [{ key: 'asme-b31-3', locator: '304.1.1' }],
  evidence: {
    form: { tag: 'secondary', derived: 'least wall of a pipe at the under-tolerance is t + c' },
    underTolerance: { tag: 'secondary' },
  },
  limits: [],
});

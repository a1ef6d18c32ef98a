import { formula, nonNegative } from '../../formula/index.js';

export interface FoliasApi579Input {
  readonly lengthParameter: number;
}

/**
 * Folias bulging factor of API 579-1 for a cylinder, a polynomial in the length parameter.
 *
 * $$M_t = 1.0010 - 0.014195\lambda + 0.29090\lambda^2 - 0.096420\lambda^3 + \dots + 1.4656 \times 10^{-10}\lambda^{10}$$
 *
 * @param input.lengthParameter  lambda = 1.285 s / sqrt(D_i t_c), >= 0; above 20 the value at 20 is used
 * @returns bulging factor
 * @throws CalculationError `invalid-input`
 * @remarks The form of the 2007 and later editions; the 2000 edition had sqrt(1 + 0.48 lambda^2). Up to lambda = 10 the
 *   printed table was compared; beyond that the polynomial stands alone and grows fast (24.0 at 20). At lambda = 0 it
 *   gives 1.0010, not 1.
 * @see API 579-1, Table 5.2
 */
export function foliasApi579(input: FoliasApi579Input): number {
  const { lengthParameter: lambda } = input;
  nonNegative(lambda, 'lengthParameter', '');
  return accuratePolynomial(Math.min(lambda, 20));
}

/** Whether the length parameter is above 20, where the factor is held at its value there. */
export function foliasApi579BeyondRange(input: FoliasApi579Input): boolean {
  return input.lengthParameter > 20;
}

/** Coefficients of lambda^10 down to 1, times 1e14: whole numbers, so that they are exact in float64. */
const SCALE = 1e14;
const COEFFICIENTS = [
  14656, -1563100, 71553000, -1846200000, 29570000000, -305400000000, 2089000000000, -9642000000000, 29090000000000,
  -1419500000000, 100100000000000,
] as const;

/** Splits a float64 into two halves of 26 bits (Veltkamp), for an exact product. */
const SPLITTER = 134217729;

/**
 * The polynomial by Horner's rule with its rounding errors carried along (Graillat, Langlois and Louvet, 2005): near
 * lambda = 20 terms of 8000 cancel to 24, which costs the plain rule some 300 ulp.
 */
function accuratePolynomial(lambda: number): number {
  const b = SPLITTER * lambda;
  const bHigh = b - (b - lambda);
  const bLow = lambda - bHigh;
  let sum = 0;
  let lost = 0;
  for (const coefficient of COEFFICIENTS) {
    const product = sum * lambda;
    const a = SPLITTER * sum;
    const aHigh = a - (a - sum);
    const aLow = sum - aHigh;
    const productLost = aLow * bLow - (product - aHigh * bHigh - aLow * bHigh - aHigh * bLow);
    const next = product + coefficient;
    const added = next - product;
    const sumLost = product - (next - added) + (coefficient - added);
    lost = lost * lambda + (productLost + sumLost);
    sum = next;
  }
  return (sum + lost) / SCALE;
}

/**
 * The polynomial by the plain rule: 1e-13 accurate, which is enough to find the worst of many sub-lengths.
 *
 * @param lambda shell parameter of the loss, without a unit
 */
export function quickFoliasApi579(lambda: number): number {
  const l = Math.min(lambda, 20);
  let sum = 0;
  for (let k = 0; k < COEFFICIENTS.length; k++) sum = sum * l + (COEFFICIENTS[k] as number);
  return sum / SCALE;
}

export const foliasApi579Formula = /* @__PURE__ */ formula<FoliasApi579Input, number>({
  id: 'pipe/folias-api579',
  title: 'Bulging factor of API 579-1 for a cylinder',
  search: ['m_t'],
  compute: foliasApi579,
  equation: {
    where: [{ symbol: 'l', kind: 'number', expression: 'min(lambda, 20)' }],
    expression:
      '1.0010 - 0.014195 * l + 0.29090 * l^2 - 0.096420 * l^3 + 0.020890 * l^4 - 0.0030540 * l^5 + 2.9570e-4 * l^6 - 1.8462e-5 * l^7 + 7.1553e-7 * l^8 - 1.5631e-8 * l^9 + 1.4656e-10 * l^10',
  },
  inputs: { lengthParameter: { symbol: 'lambda', kind: 'number', name: 'length parameter', sample: [0, 25] } },
  output: { symbol: 'M_t', kind: 'number', name: 'bulging factor' },
  sources: [{ key: 'api-579', locator: 'Table 5.2, cylinder' }],
  evidence: { form: { tag: 'secondary' } },
  limits: [
    {
      sort: 'note',
      text: 'Above a length parameter of 20 the factor is held at its value there.',
      beyond: foliasApi579BeyondRange,
      source: { key: 'api-579', locator: 'Table 5.2' },
    },
  ],
});

/** Beyond this a series about the middle loses digits to cancellation, and a fraction for the tail converges fast. */
const TAIL = 2;
const FRACTION_TERMS = 400;

/** Density of the standard normal distribution. */
export function normalDensity(x: number): number {
  return Math.exp((-x * x) / 2) / Math.sqrt(2 * Math.PI);
}

/**
 * Distribution function of the standard normal distribution: about the middle Marsaglia's series x + x^3/3 + x^5/15 + ...,
 * in the tails Laplace's continued fraction, so that a small probability keeps its digits.
 */
export function normalBelow(x: number): number {
  if (Number.isNaN(x)) return Number.NaN;
  if (x > TAIL) return 1 - upperTail(x);
  if (x < -TAIL) return upperTail(-x);
  let term = x;
  let sum = x;
  for (let odd = 3; Math.abs(term) > Number.EPSILON * Math.abs(sum); odd += 2) {
    term *= (x * x) / odd;
    sum += term;
  }
  return 0.5 + normalDensity(x) * sum;
}

/** The probability above x > 0: density over x + 1/(x + 2/(x + 3/(x + ...))). */
function upperTail(x: number): number {
  let fraction = x;
  for (let n = FRACTION_TERMS; n >= 1; n -= 1) fraction = x + n / fraction;
  return normalDensity(x) / fraction;
}

/** Coefficients of Wichura's algorithm AS 241 (Applied Statistics 37 (1988) 477-484), routine PPND16, from the highest power. */
const MIDDLE = [
  [
    2509.0809287301227, 33430.57558358813, 67265.7709270087, 45921.95393154987, 13731.69376550946, 1971.5909503065513,
    133.14166789178438, 3.3871328727963665,
  ],
  [
    5226.495278852854, 28729.085735721943, 39307.89580009271, 21213.794301586597, 5394.196021424751, 687.1870074920579,
    42.31333070160091, 1,
  ],
] as const;
const NEAR = [
  [
    0.0007745450142783414, 0.022723844989269184, 0.2417807251774506, 1.2704582524523684, 3.6478483247632045,
    5.769497221460691, 4.630337846156546, 1.4234371107496835,
  ],
  [
    1.0507500716444169e-9, 0.0005475938084995345, 0.015198666563616457, 0.14810397642748008, 0.6897673349851,
    1.6763848301838038, 2.053191626637759, 1,
  ],
] as const;
const FAR = [
  [
    2.0103343992922881e-7, 2.7115555687434876e-5, 0.0012426609473880784, 0.026532189526576124, 0.29656057182850487,
    1.7848265399172913, 5.463784911164114, 6.657904643501103,
  ],
  [
    2.0442631033899397e-15, 1.421511758316446e-7, 1.8463183175100548e-5, 0.0007868691311456133, 0.014875361290850615,
    0.1369298809227358, 0.599832206555888, 1,
  ],
] as const;

/**
 * Quantile of the standard normal distribution, by Wichura's AS 241, to about 1 part in 1e16.
 *
 * @param probability above 0 and below 1; NaN comes back for anything else
 */
export function normalQuantile(probability: number): number {
  if (!(probability > 0 && probability < 1)) return Number.NaN;
  const q = probability - 0.5;
  if (Math.abs(q) <= 0.425) return q * ratioOf(MIDDLE, 0.180625 - q * q);
  const r = Math.sqrt(-Math.log(q < 0 ? probability : 1 - probability));
  const size = r <= 5 ? ratioOf(NEAR, r - 1.6) : ratioOf(FAR, r - 5);
  return q < 0 ? -size : size;
}

function ratioOf([above, below]: readonly [readonly number[], readonly number[]], x: number): number {
  return polynomial(above, x) / polynomial(below, x);
}

function polynomial(coefficients: readonly number[], x: number): number {
  let value = 0;
  for (const coefficient of coefficients) value = value * x + coefficient;
  return value;
}

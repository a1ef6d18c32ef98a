/**
 * The arithmetic of acceptance by other routes, coded without the formulas: bisection on the water in the line, quadrature
 * of the expanding gas, pumping in steps, sums over pairs, and the density of water.
 */

const PSI = 6894.757293168361;
const FAHRENHEIT = (kelvin: number): number => kelvin * 1.8 - 459.67;

/** Kell (1975), density of water at one atmosphere [kg/m3] by degrees Celsius; coefficients from memory. */
export function waterDensity(t: number): number {
  const a = [999.83952, 16.945176, -7.9870401e-3, -46.170461e-6, 105.56302e-9, -280.54253e-12];
  return a.reduceRight((sum, coefficient) => sum * t + coefficient, 0) / (1 + 16.87985e-3 * t);
}

/** Tanaka (2001), the formula of the CIPM for the same density [kg/m3] by degrees Celsius; coefficients from memory. */
export function waterDensityTanaka(t: number): number {
  return 999.97495 * (1 - ((t - 3.983035) ** 2 * (t + 301.797)) / (522_528.9 * (t + 69.34881)));
}

/** Volume of water over that at 60 degF, by the CIPM. */
export function waterSwollen(kelvin: number): number {
  return waterDensityTanaka((60 - 32) / 1.8) / waterDensityTanaka(kelvin - 273.15);
}

const TABLE: Readonly<Record<number, number>> = {
  35: 0.9990777,
  40: 0.9990357,
  45: 0.999115,
  50: 0.9993061,
  55: 0.9996046,
  60: 1,
  65: 1.0004674,
  70: 1.0010364,
  75: 1.0016883,
  80: 1.0024178,
  85: 1.0031919,
  90: 1.0040642,
  95: 1.0050043,
  100: 1.006009,
};

/** 'acceptance/water-volume-factor': weights of the rows 5 degF apart, each a tent over its neighbours. */
export function waterFactor(kelvin: number): number {
  const f = FAHRENHEIT(kelvin);
  return Object.entries(TABLE).reduce(
    (sum, [at, value]) => sum + value * Math.max(0, 1 - Math.abs(f - Number(at)) / 5),
    0,
  );
}

export interface Pipe {
  readonly D: number;
  readonly t: number;
}

/** Water in a line over its volume, measured without pressure at 60 degF, in the handbook's own units. */
export function waterHeld({ D, t }: Pipe, pressure: number, kelvin: number, water = waterFactor(kelvin)): number {
  const [psi, warmer] = [pressure / PSI, FAHRENHEIT(kelvin) - 60];
  const compressed = 1 / (1 - (4.5e-5 * psi) / 14.73);
  const stretched = 1 + (D / t) * ((0.91 * psi) / 30e6) + 3.6e-6 * warmer;
  return (compressed * stretched * (1 + 18.2e-6 * warmer)) / water;
}

function root(f: (x: number) => number, low: number, high: number): number {
  let [a, b] = [low, high];
  for (let step = 0; step < 75; step++) {
    const middle = (a + b) / 2;
    if (f(middle) > 0 === f(b) > 0) b = middle;
    else a = middle;
  }
  return (a + b) / 2;
}

/** Pressure at which a line holds the same water at another temperature. */
export function pressureByVolumes(pipe: Pipe, P: number, from: number, to: number, water = waterFactor): number {
  const held = waterHeld(pipe, P, from, water(from));
  return root((p) => waterHeld(pipe, p, to, water(to)) - held, -60e6, 200e6);
}

export interface Fall extends Pipe {
  readonly P1: number;
  readonly P2: number;
  readonly T1: number;
  readonly T2: number;
  readonly eP: number;
  readonly eT: number;
  readonly allowed: number;
}

/** 'acceptance/pressure-fall': a grid of readings inside their errors, of water by the CIPM; every one says what fall is left unexplained. */
export function fallByGrid({ P1, P2, T1, T2, eP, eT, allowed, ...pipe }: Fall, steps = 8) {
  const cells = Array.from({ length: steps + 1 }, (_, i) => (2 * i) / steps - 1);
  let [least, most] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const a of cells) {
    for (const b of cells) {
      const fall = P1 - pressureByVolumes(pipe, P1, T1 + a * eT, T2 + b * eT, waterSwollen);
      [least, most] = [Math.min(least, fall), Math.max(most, fall)];
    }
  }
  const unexplained = [-1, 1].flatMap((a) =>
    [-1, 1].flatMap((b) => [least, most].map((f) => P1 + a * eP - (P2 + b * eP) - f)),
  );
  const [low, high] = [Math.min(...unexplained), Math.max(...unexplained)];
  const verdict = high < 0 ? 'undecided' : high <= allowed ? 'only cooling' : low > 0 ? 'leak' : 'undecided';
  return { least, most, low, high, verdict };
}

/** Change of pressure per change of temperature of a blocked elastic pipe that is held along its axis, by its volumes. */
export function changeByVolumes(
  { D, t }: Pipe,
  dT: number,
  { beta, B, E, nu, alpha }: Readonly<Record<'beta' | 'B' | 'E' | 'nu' | 'alpha', number>>,
): number {
  return root(
    (p) => {
      const hoop = (p * D) / (2 * t);
      // Held: the axial strain is nothing, so the axial stress is nu hoop - E alpha dT.
      const axial = nu * hoop - E * alpha * dT;
      const round = (hoop - nu * axial) / E + alpha * dT;
      return 2 * round + p / B - beta * dT;
    },
    -1e12,
    1e12,
  );
}

/** Simpson's rule. */
function simpson(f: (x: number) => number, from: number, to: number, pieces = 20000): number {
  const h = (to - from) / pieces;
  let sum = f(from) + f(to);
  for (let i = 1; i < pieces; i++) sum += (i % 2 === 1 ? 4 : 2) * f(from + i * h);
  return (sum * h) / 3;
}

/** Work of a gas that expands along p V^k from p1 to pA; the atmosphere's share is taken off where asked. In ln V. */
export function expansionWork(p1: number, V1: number, pA: number, k: number, lessAtmosphere: boolean): number {
  const end = Math.log(p1 / pA) / k;
  return simpson(
    (x) => {
      const V = V1 * Math.exp(x);
      return (p1 * (V1 / V) ** k - (lessAtmosphere ? pA : 0)) * V;
    },
    0,
    end,
  );
}

/** Work of pumping liquid into a thin closed cylinder in small steps: pressure times what each step takes. */
export function pumpingWork(p: number, V: number, B: number, d: number, t: number, E: number, nu: number) {
  const steps = 1000;
  let [liquid, wall] = [0, 0];
  for (let i = 0; i < steps; i++) {
    const [middle, dp] = [((i + 0.5) / steps) * p, p / steps];
    const [hoop, axial] = [(dp * d) / (2 * t), (dp * d) / (4 * t)];
    const growth = (2 * (hoop - nu * axial)) / E + (axial - nu * hoop) / E;
    liquid += (middle * V * dp) / B;
    wall += middle * V * growth;
  }
  return { liquid, wall };
}

/** 'acceptance/hardness-statistics': the variance is half the mean square of the differences of all pairs. */
export function statisticsByPairs(readings: readonly number[]) {
  const n = readings.length;
  let pairs = 0;
  for (const a of readings) for (const b of readings) pairs += (a - b) * (a - b);
  const mean = readings.reduce((average, reading, i) => average + (reading - average) / (i + 1), 0);
  return { mean, deviation: Math.sqrt(pairs / (2 * n * (n - 1))), least: [...readings].sort((a, b) => a - b)[0] };
}

/** 'acceptance/barcol-shop-mean': the sum less its extremes. */
export function meanWithoutExtremes(readings: readonly number[]): number {
  const sum = readings.reduce((a, b) => a + b, 0);
  return (sum - Math.max(...readings) - Math.min(...readings)) / (readings.length - 2);
}

/**
 * 'acceptance/barcol-readings': the variance of one reading over that of the mean, 0.28 in resin and 0.78 in laminate. The
 * variances are recalled: in resin they fall by 0.27 for every 10 of hardness.
 */
export function readingsByVariance(hardness: number, material: 'homogeneous' | 'reinforced'): number {
  if (material === 'homogeneous') {
    const softer = Math.floor(hardness / 10) * 10;
    return Math.round((2.47 - 0.027 * (Math.min(softer, 80) - 20)) / 0.28);
  }
  const variances = [22.4, 17.2, 12, 7.8, 3.6];
  return (variances[Math.min(4, Math.floor(hardness / 10) - 3)] ?? Number.NaN) / 0.78;
}

/** 'acceptance/hardness-gate': mean and least against the shares of the qualified value, reading by reading. */
export function gateByReadings(readings: readonly number[], qualified: number, needed: number): boolean {
  const short = readings.reduce((sum, reading) => sum + (reading - 0.9 * qualified), 0);
  return readings.length >= needed && short >= -1e-7 && readings.every((reading) => reading >= 0.8 * qualified - 1e-7);
}

/**
 * Cure times by other routes than the library takes, in plain SI numbers. Nothing here imports what it checks.
 */

/** Avogadro times Boltzmann. */
export const R = 6.02214076e23 * 1.380649e-23;

/** The shift factor in the textbook form with two reciprocals. */
export function shift(E: number, reference: number, temperature: number): number {
  return Math.exp((E / R) * (1 / reference - 1 / temperature));
}

/** Exponential integral E1 for arguments above 1, by its continued fraction (modified Lentz). */
function exponentialIntegral(x: number): number {
  let b = x + 1;
  let c = 1e300;
  let d = 1 / b;
  let h = d;
  for (let i = 1; i < 500; i++) {
    const a = -i * i;
    b += 2;
    d = 1 / (a * d + b);
    c = b + a / c;
    const factor = c * d;
    h *= factor;
    if (Math.abs(factor - 1) < 1e-16) break;
  }
  return h * Math.exp(-x);
}

/** Equivalent time of a linear ramp in closed form: the integral of exp(-E/RT) is T exp(-E/RT) - (E/R) E1(E/RT). */
export function rampInClosedForm(E: number, reference: number, from: number, to: number, duration: number): number {
  const primitive = (T: number): number => T * Math.exp(-E / (R * T)) - (E / R) * exponentialIntegral(E / (R * T));
  return (Math.exp(E / (R * reference)) * (primitive(to) - primitive(from)) * duration) / (to - from);
}

/** Equivalent and uncredited time of any temperature course, by midpoints. */
export function courseByMidpoints(
  E: number,
  reference: number,
  minimum: number,
  temperatureAt: (clock: number) => number,
  duration: number,
  points: number,
): { readonly equivalent: number; readonly uncredited: number } {
  const dt = duration / points;
  let [equivalent, uncredited] = [0, 0];
  for (let i = 0; i < points; i++) {
    const T = temperatureAt((i + 0.5) * dt);
    if (T < minimum) uncredited += dt;
    else equivalent += shift(E, reference, T) * dt;
  }
  return { equivalent, uncredited };
}

/** The clock time at which a course has gained an equivalent time, by marching in small steps. */
export function courseReaches(
  E: number,
  reference: number,
  minimum: number,
  temperatureAt: (clock: number) => number,
  required: number,
  dt: number,
  until: number,
): number {
  let [clock, gained] = [0, 0];
  while (gained < required) {
    const T = temperatureAt(clock + dt / 2);
    if (T >= minimum) gained += shift(E, reference, T) * dt;
    clock += dt;
    if (clock > until) return Number.POSITIVE_INFINITY;
  }
  return clock;
}

/** The temperature of a list of steps at a clock time. */
export function temperatureOfSteps(
  steps: readonly { readonly duration: number; readonly temperature: number }[],
): (clock: number) => number {
  return (clock) => {
    let end = 0;
    for (const { duration, temperature } of steps) {
      end += duration;
      if (clock < end) return temperature;
    }
    return Number.NaN;
  };
}

/** A straight line through points by the two normal equations in the raw sums. */
export function lineByNormalEquations(points: readonly (readonly [x: number, y: number])[]): {
  readonly slope: number;
  readonly intercept: number;
  readonly r2: number;
} {
  let [n, sx, sy, sxx, sxy] = [0, 0, 0, 0, 0];
  for (const [x, y] of points) {
    n += 1;
    sx += x;
    sy += y;
    sxx += x * x;
    sxy += x * y;
  }
  const slope = (n * sxy - sx * sy) / (n * sxx - sx * sx);
  const intercept = (sy - slope * sx) / n;
  let [left, whole] = [0, 0];
  for (const [x, y] of points) {
    left += (y - intercept - slope * x) ** 2;
    whole += (y - sy / n) ** 2;
  }
  return { slope, intercept, r2: 1 - left / whole };
}

/** The maker's safe row by sorting: the first of the rows that are safe, tightest first. */
export function safeRow(
  rows: readonly { readonly temperature: number; readonly humidity: number; readonly time: number }[],
  temperature: number,
  humidity: number,
  wait: boolean,
): number | undefined {
  const sign = wait ? 1 : -1;
  return rows
    .filter((row) => sign * (temperature - row.temperature) >= 0 && sign * (humidity - row.humidity) >= 0)
    .map((row) => row.time)
    .sort((a, b) => sign * (a - b))[0];
}

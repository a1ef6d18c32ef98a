import { kOfHole, type Plate } from './rim.js';

/** A hole under a laminate that was raised until it leaked. */
export interface HoleTest {
  readonly holeDiameter: number;
  readonly laminateThickness: number;
  readonly pressure: number;
}

const FEWEST_TESTS = 9;
const FEWEST_SIZES = 3;
/** Sizes are two where they lie a tenth apart. */
const APART = 1.1;

/** Nine tests or more, of three sizes or more; where there are none nobody counts on them. */
export function testsSuffice({ holeTests: tests }: { readonly holeTests?: readonly HoleTest[] }): boolean {
  if (tests === undefined) return true;
  const sizes = tests.map(({ holeDiameter }) => holeDiameter).sort((a, b) => a - b);
  let counted = 0;
  let last = 0;
  for (const size of sizes) {
    if (counted > 0 && size < last * APART * (1 - 1e-9)) continue;
    counted += 1;
    last = size;
  }
  return tests.length >= FEWEST_TESTS && counted >= FEWEST_SIZES;
}

/** Lower confidence limit (2.8): least squares of P = A sqrt(gamma) through the origin, less Student's t of its standard error. */
export function energyFromTests(plate: Plate, tests: readonly HoleTest[]): number {
  const rows = tests.map(({ holeDiameter, laminateThickness, pressure }) => ({
    A: 1 / Math.sqrt(kOfHole(plate, holeDiameter, laminateThickness)),
    P: pressure,
  }));
  const squares = rows.reduce((sum, { A }) => sum + A * A, 0);
  const mean = rows.reduce((sum, { A, P }) => sum + A * P, 0) / squares;
  const freedom = rows.length - 2;
  const scatter = Math.sqrt(rows.reduce((sum, { A, P }) => sum + (P - A * mean) ** 2, 0) / freedom);
  const lowest = mean - studentT(freedom) * scatter * Math.sqrt(1 / squares);
  return lowest > 0 ? lowest * lowest : 0;
}

/** Student's t that a share of 0.95 lies within on both sides, by the integral of its density over the angle with tan = t/sqrt(n). */
function studentT(freedom: number): number {
  const STEPS = 2000;
  // The density over that angle is cos^(n-1), on (-pi/2, pi/2).
  const upTo = (angle: number): number => {
    let sum = 0;
    for (let step = 0; step <= STEPS; step++) {
      const weight = step === 0 || step === STEPS ? 1 : step % 2 === 1 ? 4 : 2;
      sum += weight * Math.cos((angle * step) / STEPS) ** (freedom - 1);
    }
    return (sum * angle) / STEPS;
  };
  const whole = upTo(Math.PI / 2);
  let [low, high] = [0, Math.PI / 2];
  for (let step = 0; step < 100; step++) {
    const middle = (low + high) / 2;
    if (upTo(middle) < 0.95 * whole) low = middle;
    else high = middle;
  }
  return Math.tan(low) * Math.sqrt(freedom);
}

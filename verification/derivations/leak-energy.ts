/**
 * Energy that a blister over a round hole releases when its rim advances, found by numbers: the volumes under a clamped
 * plate, under its transverse shear and inside half of a pressurised penny crack are integrated, and half of pressure
 * times volume is differentiated with respect to area. Only the shear factor 2/3 is put in.
 */
export interface Blister {
  readonly holeDiameter: number;
  readonly thickness: number;
  /** Young's modulus over 1 - nu^2. */
  readonly plateModulus: number;
  readonly shearModulus: number;
}

const SHEAR_FACTOR = 2 / 3;

/** Composite Simpson over an even number of steps. */
function simpson(f: (x: number) => number, from: number, to: number, steps = 1024): number {
  const h = (to - from) / steps;
  let sum = f(from) + f(to);
  for (let i = 1; i < steps; i++) sum += (i % 2 === 1 ? 4 : 2) * f(from + i * h);
  return (sum * h) / 3;
}

/** Slope of a clamped plate under pressure 1, from the shear force r/2 and a slope of zero at the rim. */
function plateSlope(r: number, a: number, stiffness: number): number {
  // D d/dr[(1/r) d(r slope)/dr] = -r/2; integrated twice, with the constant from slope(a) = 0.
  const inner = (radius: number) => simpson((x) => (x * x * x) / (4 * stiffness), 0, radius, 8);
  const constant = inner(a) / ((a * a) / 2);
  return r === 0 ? 0 : (constant * ((r * r) / 2) - inner(r)) / r;
}

/** Volume under the bent plate per unit pressure. */
function bendingVolume(a: number, { thickness, plateModulus }: Blister): number {
  const stiffness = (plateModulus * thickness ** 3) / 12;
  // Volume = integral of pi r^2 times the downward slope.
  return simpson((r) => Math.PI * r * r * plateSlope(r, a, stiffness), 0, a);
}

/** Volume under the shear deflection per unit pressure: slope r/(2 kappa G t). */
function shearVolume(a: number, { thickness, shearModulus }: Blister): number {
  return simpson((r) => (Math.PI * r * r * r) / (2 * SHEAR_FACTOR * shearModulus * thickness), 0, a);
}

/** Volume of half a pressurised penny crack per unit pressure: opening 4 sqrt(a^2 - r^2)/(pi E'). */
function crackVolume(a: number, { plateModulus }: Blister): number {
  // With r = a sin(u) the root goes and the integrand is smooth.
  const profile = (u: number) => (4 * a * Math.cos(u)) / (Math.PI * plateModulus);
  return simpson((u) => 2 * Math.PI * a * Math.sin(u) * profile(u) * a * Math.cos(u), 0, Math.PI / 2);
}

/** d(V/2)/d(area) at the rim of the hole, by a five-point difference in the radius. */
function releaseOf(volume: (a: number) => number, a: number): number {
  const h = a / 512;
  const slope = (volume(a - 2 * h) - 8 * volume(a - h) + 8 * volume(a + h) - volume(a + 2 * h)) / (12 * h);
  return slope / 2 / (2 * Math.PI * a);
}

export type Term = 'bending' | 'shear' | 'crack';

/** Energy release rate per pressure squared of each term. */
export function releaseTerms(blister: Blister): Readonly<Record<Term, number>> {
  const a = blister.holeDiameter / 2;
  return {
    bending: releaseOf((radius) => bendingVolume(radius, blister), a),
    shear: releaseOf((radius) => shearVolume(radius, blister), a),
    crack: releaseOf((radius) => crackVolume(radius, blister), a),
  };
}

/** Pressure at which the release equals `gamma`. */
export function blisterPressure(blister: Blister, gamma: number): number {
  const { bending, shear, crack } = releaseTerms(blister);
  return Math.sqrt(gamma / (bending + shear + crack));
}

/** Thickness at which a blister just holds `pressure`, by bisection of the energy balance; undefined when none does. */
export function blisterThickness(
  balance: (thickness: number) => number,
  [thin, thick]: readonly [number, number],
): number | undefined {
  let [low, high] = [Math.log(thin), Math.log(thick)];
  if (balance(thick) > 0) return undefined;
  for (let i = 0; i < 200; i++) {
    const middle = (low + high) / 2;
    if (balance(Math.exp(middle)) > 0) low = middle;
    else high = middle;
  }
  return Math.exp((low + high) / 2);
}

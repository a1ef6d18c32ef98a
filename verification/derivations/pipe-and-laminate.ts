/**
 * A pipe and a laminate round it as two thin rings in parallel, the laminate added under a live pressure. Everything
 * follows from equilibrium and equal increments of strain; no closed form of a thickness is used.
 */
export interface Rings {
  readonly diameter: number;
  readonly wall: number;
  readonly pipeModulus: number;
  readonly laminateModulus: number;
}

/** Stress of the elastic pipe at `pressure`, with the laminate of thickness `t` put on at `live`. */
function pipeStress(rings: Rings, t: number, live: number, pressure: number): number {
  const { diameter: D, wall, pipeModulus: Es, laminateModulus: Ec } = rings;
  const before = (live * D) / 2 / (Es * wall);
  const after = ((pressure - live) * D) / 2 / (Es * wall + Ec * t);
  return Es * (before + after);
}

/** Laminate thickness at which the elastic pipe is just at stress `s`, by bisection; 0 when it never reaches it. */
export function sharingThickness(rings: Rings, live: number, pressure: number, s: number): number {
  if (pipeStress(rings, 0, live, pressure) <= s) return 0;
  let [low, high] = [0, 1e4];
  for (let i = 0; i < 400; i++) {
    const middle = low + (high - low) / 2;
    if (pipeStress(rings, middle, live, pressure) > s) low = middle;
    else high = middle;
  }
  return low + (high - low) / 2;
}

/**
 * Strain of the laminate after a march from the live pressure to the full pressure with an elastic, perfectly plastic
 * pipe of yield strength `y`. A step in which the pipe yields is cut at the yield.
 */
export function marchedStrain(
  rings: Rings,
  t: number,
  live: number,
  pressure: number,
  y: number,
  steps = 20000,
): number {
  const { diameter: D, wall, pipeModulus: Es, laminateModulus: Ec } = rings;
  let stress = (live * D) / (2 * wall);
  if (stress > y) throw new RangeError('the bare pipe yields under the live pressure');
  const step = ((pressure - live) * D) / 2 / steps;
  let strain = 0;
  for (let i = 0; i < steps; i++) {
    let left = step;
    if (stress < y) {
      const stiff = Es * wall + Ec * t;
      const toYield = ((y - stress) / Es) * stiff;
      const elastic = Math.min(left, toYield);
      strain += elastic / stiff;
      stress = elastic === toYield ? y : stress + (Es * elastic) / stiff;
      left -= elastic;
    }
    strain += left / (Ec * t);
  }
  return strain;
}

/** Root of the strain equation with credit for live pressure, by bisection on the thickness. */
export function creditedThickness(rings: Rings, live: number, pressure: number, y: number, limit: number): number {
  const { diameter: D, wall, pipeModulus: Es, laminateModulus: Ec } = rings;
  const strain = (t: number) =>
    (pressure * D) / 2 / (Ec * t) - (y * wall) / (Ec * t) - (live * D) / 2 / (Ec * t + Es * wall);
  let [low, high] = [1e-12, 1e4];
  for (let i = 0; i < 400; i++) {
    const middle = Math.sqrt(low * high);
    if (strain(middle) > limit) low = middle;
    else high = middle;
  }
  return Math.sqrt(low * high);
}

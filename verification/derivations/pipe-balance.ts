/** A pipe by its forces: pressure and stress added up strip by strip. Imports nothing that it checks. */

/** Pull of a pressure of 1 on a cut along the pipe, per length, from strips of the half circle it acts on. */
export function pullOnHalf(diameter: number, strips = 20_000): number {
  let sum = 0;
  for (let i = 0; i < strips; i++)
    sum += Math.sin((Math.PI * (i + 0.5)) / strips) * (Math.PI / strips) * (diameter / 2);
  return sum;
}

/** Push of a pressure of 1 on the closed end, ring by ring. */
export function pushOnEnd(diameter: number, rings = 2000): number {
  let sum = 0;
  for (let i = 0; i < rings; i++) {
    const [inner, outer] = [i, i + 1].map((edge) => (edge * diameter) / 2 / rings) as [number, number];
    sum += Math.PI * (outer + inner) * (outer - inner);
  }
  return sum;
}

/** Stresses of a thin ring of bars under tension and bending at the bar that is farthest pulled and the one farthest pushed. */
export function barsUnder(tension: number, moment: number, diameter: number, wall: number, bars = 3600) {
  const each = (Math.PI * diameter * wall) / bars;
  const lever = (i: number): number => (diameter / 2) * Math.cos((2 * Math.PI * i) / bars);
  let [area, inertia] = [0, 0];
  for (let i = 0; i < bars; i++) {
    area += each;
    inertia += each * lever(i) ** 2;
  }
  // The plane section moves and turns until its bars carry both; stress is stretch times a stiffness of 1.
  const [moved, turned] = [tension / area, moment / inertia];
  const stress = (i: number): number => moved + turned * lever(i);
  return { direct: moved, bending: turned * lever(0), pulled: stress(0), pushed: stress(bars / 2) };
}

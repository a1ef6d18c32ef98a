/**
 * Strains of a thin orthotropic laminate under line loads, by its stiffness: the two-by-two matrix is built from moduli
 * and both Poisson's ratios and solved by elimination. Nothing here knows a thickness formula.
 */
export interface Ply {
  readonly hoopModulus: number;
  readonly axialModulus: number;
  /** Loaded along the hoop, contracting along the pipe. */
  readonly poissonRatio: number;
}

export interface LineLoads {
  /** Force per length along the pipe, P D/2. */
  readonly hoop: number;
  /** Force per length round the pipe, F/(pi D). */
  readonly axial: number;
}

/** Hoop and axial strain of a laminate of thickness `t`. */
export function strains(ply: Ply, loads: LineLoads, t: number): { readonly hoop: number; readonly axial: number } {
  const { hoopModulus: Ec, axialModulus: Ea, poissonRatio: nuca } = ply;
  const nuac = (nuca * Ea) / Ec;
  const room = 1 - nuca * nuac;
  const [a, b, c, d] = [(Ec * t) / room, (nuac * Ec * t) / room, (nuca * Ea * t) / room, (Ea * t) / room];
  // Elimination of the hoop strain from the second row.
  const factor = c / a;
  const axial = (loads.axial - factor * loads.hoop) / (d - factor * b);
  return { hoop: (loads.hoop - b * axial) / a, axial };
}

/** Thickness at which one strain falls to `limit`, by bisection on the logarithm of the thickness. */
export function thicknessAt(ply: Ply, loads: LineLoads, direction: 'hoop' | 'axial', limit: number): number {
  let [low, high] = [1e-9, 1e3];
  if (strains(ply, loads, low)[direction] <= limit) return 0;
  for (let i = 0; i < 200; i++) {
    const middle = Math.sqrt(low * high);
    if (strains(ply, loads, middle)[direction] > limit) low = middle;
    else high = middle;
  }
  return Math.sqrt(low * high);
}

/**
 * Least energy per volume and square of strain over all directions of strain (hoop = cos a, axial = sin a), by the
 * stiffness matrix: above 0 for whatever can be made, since no laminate gives energy when strained.
 */
export function leastStrainEnergy({ hoopModulus: Ec, axialModulus: Ea, poissonRatio: nuca }: Ply): number {
  const nuac = (nuca * Ea) / Ec;
  const room = 1 - nuca * nuac;
  let least = Number.POSITIVE_INFINITY;
  for (let degree = 0; degree < 180; degree += 0.5) {
    const [hoop, axial] = [Math.cos((degree * Math.PI) / 180), Math.sin((degree * Math.PI) / 180)];
    const stress = { hoop: (Ec * (hoop + nuac * axial)) / room, axial: (Ea * (axial + nuca * hoop)) / room };
    least = Math.min(least, (stress.hoop * hoop + stress.axial * axial) / 2);
  }
  return least;
}

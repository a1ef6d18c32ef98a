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

/**
 * How much more half a crack releases in a body soft through its thickness: K2 sqrt((sqrt(E1/E2) + E1/(2 G)) / (2 E1 E2)) in place
 * of K2 / E1 (Sih, Paris and Irwin 1965, from memory). No case states the modulus through the thickness: 2 G is a low one.
 */
export function edgeFactor(stripModulus: number, shear: number): number {
  const softer = Math.max(1, stripModulus / (2 * shear));
  return Math.sqrt((softer * (softer + Math.sqrt(softer))) / 2);
}

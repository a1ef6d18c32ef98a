/** A pipe and a laminate round it in plane stress, strained alike: strains by elimination, thickness and pressure by bisection. */
export interface TwoLayers {
  readonly pipe: number;
  readonly wrap: number;
  readonly wall: number;
  readonly steel: number;
  readonly nu: number;
  readonly round: number;
  readonly along: number;
  readonly nuca: number;
  readonly stress: number;
  readonly hoopStrain: number;
  readonly axialStrain: number;
}

/** Whether both stresses of the pipe and both strains stay within their limits. */
function holds(layers: TwoLayers, thickness: number, pressure: number, force: number): boolean {
  const { pipe, wrap, wall, steel, nu, round, along, nuca, stress, hoopStrain, axialStrain } = layers;
  // Compliance of the laminate, inverted here and not by its closed form.
  const compliance = { round: 1 / round, along: 1 / along, cross: -nuca / round };
  const turned = compliance.round * compliance.along - compliance.cross ** 2;
  const ply = { round: compliance.along / turned, along: compliance.round / turned, cross: -compliance.cross / turned };
  const plate = { own: steel / (1 - nu ** 2), cross: (nu * steel) / (1 - nu ** 2) };
  // Pull over a cut of unit length along the pipe, and over the whole cut across it.
  const cut = [
    [plate.own * wall + ply.round * thickness, plate.cross * wall + ply.cross * thickness, (pressure * wrap) / 2],
    [
      Math.PI * (pipe * plate.cross * wall + wrap * ply.cross * thickness),
      Math.PI * (pipe * plate.own * wall + wrap * ply.along * thickness),
      force,
    ],
  ] as const;
  const factor = cut[1][0] / cut[0][0];
  const axial = (cut[1][2] - factor * cut[0][2]) / (cut[1][1] - factor * cut[0][1]);
  const hoop = (cut[0][2] - cut[0][1] * axial) / cut[0][0];
  const stresses = [plate.own * hoop + plate.cross * axial, plate.own * axial + plate.cross * hoop];
  return Math.max(...stresses) <= stress && hoop <= hoopStrain && axial <= axialStrain;
}

/** Least thickness from which on every limit holds under each force, by halving the last stretch of a row that fails. */
export function leastThickness(layers: TwoLayers, pressure: number, forces: readonly number[], most: number): number {
  const enough = (t: number): boolean => forces.every((force) => holds(layers, t, pressure, force));
  if (!enough(most)) return Number.POSITIVE_INFINITY;
  const steps = 2000;
  let failed = -1;
  for (let i = 0; i <= steps; i++) if (!enough((most * i) / steps)) failed = i;
  if (failed < 0) return 0;
  let [low, high] = [(most * failed) / steps, (most * (failed + 1)) / steps];
  for (let i = 0; i < 100; i++) {
    const middle = (low + high) / 2;
    if (enough(middle)) high = middle;
    else low = middle;
  }
  return high;
}

/** Pressure up to which every limit holds, with the end load of that pressure and without it. */
export function greatestPressure(layers: TwoLayers, thickness: number, external: number, least: number): number {
  const enough = (P: number): boolean =>
    holds(layers, thickness, P, (Math.PI / 4) * P * layers.pipe ** 2 + external) && holds(layers, thickness, P, least);
  let [low, high] = [0, 1e9];
  for (let i = 0; i < 200; i++) {
    const middle = (low + high) / 2;
    if (enough(middle)) low = middle;
    else high = middle;
  }
  return low;
}

/** A pipe and the laminate round it that strain alike, round and along: what both biaxial sharing formulas start from. */
export interface BiaxialPair {
  readonly outsideDiameter: number;
  readonly wrappedDiameter: number;
  readonly substrateWall: number;
  readonly substrateModulus: number;
  readonly substratePoisson: number;
  readonly hoopModulus: number;
  readonly axialModulus: number;
  readonly poissonRatio: number;
  readonly allowableStress: number;
  readonly hoopStrain: number;
  readonly axialStrain: number;
}

/** Value at a laminate thickness of zero, and what each unit of thickness adds. */
type Linear = readonly [none: number, each: number];

/** Stiffness of both layers over their thickness: round, along, and the two that couple them. */
interface Stiffness {
  readonly hoop: Linear;
  readonly axial: Linear;
  readonly hoopByAxial: Linear;
  readonly axialByHoop: Linear;
}

/** The pipe lies on its own circle and the laminate on that over the filler, so the laminate weighs D_w/D along the pipe. */
export function stiffnessOf(pair: BiaxialPair): Stiffness {
  const { substrateModulus: Es, substratePoisson: nu, substrateWall: ts, hoopModulus: Ec, axialModulus: Ea } = pair;
  const { poissonRatio: nuca, outsideDiameter: D, wrappedDiameter: Dw } = pair;
  const wall = (Es * ts) / (1 - nu * nu);
  const ply = 1 / (1 - (nuca * nuca * Ea) / Ec);
  const longer = Dw / D;
  return {
    hoop: [wall, Ec * ply],
    axial: [wall, Ea * ply * longer],
    hoopByAxial: [nu * wall, nuca * Ea * ply],
    axialByHoop: [nu * wall, nuca * Ea * ply * longer],
  };
}

/** One thing that may not be exceeded, as round times the hoop strain and along times the axial strain. */
export interface Bound {
  readonly round: number;
  readonly along: number;
  readonly limit: number;
}

/** Both stresses of the pipe and both strains. */
export function boundsOf(pair: BiaxialPair): readonly Bound[] {
  const { substrateModulus: Es, substratePoisson: nu, allowableStress, hoopStrain, axialStrain } = pair;
  const plate = Es / (1 - nu * nu);
  return [
    { round: plate, along: nu * plate, limit: allowableStress },
    { round: nu * plate, along: plate, limit: allowableStress },
    { round: 1, along: 0, limit: hoopStrain },
    { round: 0, along: 1, limit: axialStrain },
  ];
}

/** Determinant of the stiffness, by powers of the laminate thickness: none of the three is below 0. */
export function determinantOf({ hoop, axial, hoopByAxial, axialByHoop }: Stiffness): readonly [number, number, number] {
  return [
    hoop[0] * axial[0] - hoopByAxial[0] * axialByHoop[0],
    hoop[0] * axial[1] + hoop[1] * axial[0] - hoopByAxial[0] * axialByHoop[1] - hoopByAxial[1] * axialByHoop[0],
    hoop[1] * axial[1] - hoopByAxial[1] * axialByHoop[1],
  ];
}

/** What a bound is held against, times the determinant, under a pull round and one along, each for a unit of length. */
export function responseOf(stiffness: Stiffness, { round, along }: Bound, hoopLoad: number, axialLoad: number): Linear {
  const at = (power: 0 | 1): number => {
    const hoop = hoopLoad * stiffness.axial[power] - axialLoad * stiffness.hoopByAxial[power];
    const axial = axialLoad * stiffness.hoop[power] - hoopLoad * stiffness.axialByHoop[power];
    return round * hoop + along * axial;
  };
  return [at(0), at(1)];
}

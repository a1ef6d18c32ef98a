import type { Strain, Stress } from '../../quantity/index.js';
import { freeOf, type GrowingPly, type Growth, resultantsOf } from './free-ply.js';
import { layersOf, plateOf, respond } from './plate.js';
import { reducedOf, strainInPly, type Three } from './turning.js';

/** Stresses and strains of one face of a ply, in its own axes. */
export interface PlyState {
  /** Number of the ply, the lowest first. */
  readonly ply: number;
  /** Which face of it. */
  readonly face: 'lower' | 'upper';
  /** Along the fibres [Pa]. */
  readonly alongStress: Stress;
  /** Across the fibres [Pa]. */
  readonly acrossStress: Stress;
  /** Shear in the plane of the ply [Pa]. */
  readonly shearStress: Stress;
  /** Along the fibres. */
  readonly alongStrain: Strain;
  /** Across the fibres. */
  readonly acrossStrain: Strain;
  /** Shear strain in the plane of the ply. */
  readonly shearStrain: Strain;
}

/** The state of both faces of every ply under loads and growth. */
export function statesOf(plies: readonly GrowingPly[], loads: Three, moments: Three, growth: Growth): PlyState[] {
  const [heldLoads, heldMoments] = resultantsOf(plies, growth);
  const [e, k] = respond(plateOf(plies), plus(loads, heldLoads), plus(moments, heldMoments));
  return layersOf(plies).flatMap(({ middle, thickness }, index) =>
    (['lower', 'upper'] as const).map((face) => {
      const ply = plies[index] as GrowingPly;
      const z = face === 'lower' ? middle - thickness / 2 : middle + thickness / 2;
      const [e1, e2, g12] = strainInPly([e[0] + z * k[0], e[1] + z * k[1], e[2] + z * k[2]], ply.angle);
      const [free1, free2] = freeOf(ply, growth);
      const [q11, q12, q22, q66] = reducedOf(ply);
      const [m1, m2] = [e1 - free1, e2 - free2];
      return {
        ply: index + 1,
        face,
        alongStress: (q11 * m1 + q12 * m2) as Stress,
        acrossStress: (q12 * m1 + q22 * m2) as Stress,
        shearStress: (q66 * g12) as Stress,
        alongStrain: e1 as Strain,
        acrossStrain: e2 as Strain,
        shearStrain: g12 as Strain,
      };
    }),
  );
}

function plus([a, b, c]: Three, [x, y, z]: Three): Three {
  return [a + x, b + y, c + z];
}

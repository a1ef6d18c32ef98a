import { formula } from '../../formula/index.js';
import type { Curvature, Strain } from '../../quantity/index.js';
import { plies } from './declared-inputs.js';
import { loadsOf, loadX, loadY, momentX, momentY, type PlateLoads, shearFlow, twist } from './loads.js';
import { plateOf, respond } from './plate.js';
import { allFinite, checkPlies, type Ply } from './ply.js';

export interface MidPlaneStrainsInput extends PlateLoads {
  readonly plies: readonly Ply[];
}

/** How a laminate strains and bends. */
export interface MidPlaneStrains {
  readonly strainX: Strain;
  readonly strainY: Strain;
  readonly shearStrain: Strain;
  readonly curvatureX: Curvature;
  readonly curvatureY: Curvature;
  readonly curvatureXY: Curvature;
}

/**
 * Strains of the mid-plane and curvatures of a laminate under line loads and line moments.
 *
 * $$\begin{bmatrix} N \\ M \end{bmatrix} = \begin{bmatrix} A & B \\ B & D \end{bmatrix}
 * \begin{bmatrix} \varepsilon^0 \\ \kappa \end{bmatrix}$$
 *
 * @param input.plies      from z = -h/2 upward: thickness [m], angle from x to the fibres [rad], E_1, E_2, G_12 [Pa], nu_12
 * @param input.loadX      N_x [N/m]
 * @param input.loadY      N_y [N/m]
 * @param input.shearFlow  N_xy [N/m]
 * @param input.momentX    M_x [N]
 * @param input.momentY    M_y [N]
 * @param input.twist      M_xy [N]
 * @returns strains of the mid-plane, the shear strain that of engineers, and curvatures [1/m]
 * @throws CalculationError `invalid-input`
 * @remarks Small strains, plies that stay flat and bonded; free to bend.
 * @see Nettles, NASA RP-1351, 1994, Eq. 53 to 56
 */
export function midPlaneStrains(input: MidPlaneStrainsInput): MidPlaneStrains {
  checkPlies(input.plies);
  const [loads, moments] = loadsOf(input);
  const [e, k] = respond(plateOf(input.plies), loads, moments);
  allFinite([...e, ...k], 'strain', '');
  return {
    strainX: e[0] as Strain,
    strainY: e[1] as Strain,
    shearStrain: e[2] as Strain,
    curvatureX: k[0] as Curvature,
    curvatureY: k[1] as Curvature,
    curvatureXY: k[2] as Curvature,
  };
}

export const midPlaneStrainsFormula = /* @__PURE__ */ formula<MidPlaneStrainsInput, MidPlaneStrains>({
  id: 'laminate/mid-plane-strains',
  title: 'Strains and curvatures of a laminate',
  compute: midPlaneStrains,
  equation: { algorithm: 'six linear equations of A, B and D, by elimination' },
  inputs: { plies, loadX, loadY, shearFlow, momentX, momentY, twist },
  output: {
    strainX: { symbol: 'eps_x', kind: 'strain', name: 'strain along x' },
    strainY: { symbol: 'eps_y', kind: 'strain', name: 'strain along y' },
    shearStrain: { symbol: 'gamma_xy', kind: 'strain', name: 'shear strain' },
    curvatureX: { symbol: 'kappa_x', kind: 'curvature', name: 'curvature along x' },
    curvatureY: { symbol: 'kappa_y', kind: 'curvature', name: 'curvature along y' },
    curvatureXY: { symbol: 'kappa_xy', kind: 'curvature', name: 'twist for each length' },
  },
  sources: [{ key: 'nasa-rp-1351', locator: 'Eq. 53 to 56' }],
  evidence: { form: { tag: 'secondary', derived: 'least energy of the laminate, by determinants' } },
  limits: [],
});

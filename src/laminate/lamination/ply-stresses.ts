import { formula } from '../../formula/index.js';
import {
  checkGrowth,
  type GrowingPly,
  type Growth,
  growingPlies,
  moistureChange,
  temperatureChange,
} from './free-ply.js';
import { loadsOf, loadX, loadY, momentX, momentY, type PlateLoads, shearFlow, twist } from './loads.js';
import { allFinite, checkPlies } from './ply.js';
import { type PlyState, statesOf } from './ply-states.js';

export interface PlyStressesInput extends PlateLoads, Growth {
  readonly plies: readonly GrowingPly[];
}

export interface PlyStresses {
  readonly states: readonly PlyState[];
}

/**
 * Stresses and strains of every ply of a laminate, on both faces, under loads, temperature and moisture.
 *
 * $$\varepsilon(z) = \varepsilon^0 + z\kappa,\qquad \sigma = Q\,(\varepsilon - \alpha\,\Delta T - \beta\,\Delta c)$$
 *
 * @param input.plies              from z = -h/2 upward, with expansions along and across [1/K] and swelling for each part of moisture
 * @param input.loadX              N_x [N/m]
 * @param input.loadY              N_y [N/m]
 * @param input.shearFlow          N_xy [N/m]
 * @param input.momentX            M_x [N]
 * @param input.momentY            M_y [N]
 * @param input.twist              M_xy [N]
 * @param input.temperatureChange  dT since the laminate was without stress [K], of either sign
 * @param input.moistureChange     dc, moisture taken up by mass, of either sign
 * @returns for each face of each ply, the first counted 1: stresses [Pa] and whole strains in the axes of the ply
 * @throws CalculationError `invalid-input`
 * @see Nettles, NASA RP-1351, 1994, section VI
 */
export function plyStresses(input: PlyStressesInput): PlyStresses {
  const { plies } = input;
  checkPlies(plies);
  checkGrowth(plies, input);
  const [loads, moments] = loadsOf(input);
  const states = statesOf(plies, loads, moments, input);
  for (const state of states)
    allFinite(
      [state.alongStress, state.acrossStress, state.shearStress, state.alongStrain, state.acrossStrain],
      'stress',
      'Pa',
    );
  return { states };
}

export const plyStressesFormula = /* @__PURE__ */ formula<PlyStressesInput, PlyStresses>({
  id: 'laminate/ply-stresses',
  title: 'Stresses of the plies of a laminate',
  search: ['clt', 'laminate theory'],
  compute: plyStresses,
  equation: {
    algorithm:
      'strains of the laminate under the loads and those of temperature and moisture; on each face the strain less the free strain, turned into the ply, times its stiffness',
  },
  inputs: {
    plies: growingPlies,
    loadX,
    loadY,
    shearFlow,
    momentX,
    momentY,
    twist,
    temperatureChange,
    moistureChange,
  },
  output: {
    states: {
      symbol: 'states',
      kind: 'list',
      name: 'faces of the plies',
      columns: {
        ply: 'count',
        face: 'choice',
        alongStress: 'stress',
        acrossStress: 'stress',
        shearStress: 'stress',
        alongStrain: 'strain',
        acrossStrain: 'strain',
        shearStrain: 'strain',
      },
    },
  },
  sources: [{ key: 'nasa-rp-1351', locator: 'section VI' }],
  evidence: { form: { tag: 'secondary', derived: 'the stresses of the plies balance the loads' } },
  limits: [],
});

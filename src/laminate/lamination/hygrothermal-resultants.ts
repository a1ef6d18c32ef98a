import { formula } from '../../formula/index.js';
import type { LineLoad, LineMoment } from '../../quantity/index.js';
import {
  checkGrowth,
  type GrowingPly,
  type Growth,
  growingPlies,
  moistureChange,
  resultantsOf,
  temperatureChange,
} from './free-ply.js';
import { allFinite, checkPlies } from './ply.js';

export interface HygrothermalResultantsInput extends Growth {
  readonly plies: readonly GrowingPly[];
}

/** What would hold a laminate where it was. */
export interface HygrothermalResultants {
  readonly loadX: LineLoad;
  readonly loadY: LineLoad;
  readonly shearFlow: LineLoad;
  readonly momentX: LineMoment;
  readonly momentY: LineMoment;
  readonly twist: LineMoment;
}

/**
 * Line loads and moments of a change of temperature and of moisture: what would hold the laminate where it was.
 *
 * $$N^T = \sum \bar Q (\bar\alpha\,\Delta T + \bar\beta\,\Delta c)\, t,\qquad
 * M^T = \sum \bar Q (\bar\alpha\,\Delta T + \bar\beta\,\Delta c)\, t z$$
 *
 * @param input.plies              from z = -h/2 upward, with expansions along and across [1/K] and swelling for each part of moisture
 * @param input.temperatureChange  dT since the laminate was without stress [K], of either sign
 * @param input.moistureChange     dc, moisture taken up by mass, of either sign
 * @returns N_x, N_y, N_xy [N/m] and M_x, M_y, M_xy [N]
 * @throws CalculationError `invalid-input`
 * @see Nettles, NASA RP-1351, 1994, section VI
 */
export function hygrothermalResultants(input: HygrothermalResultantsInput): HygrothermalResultants {
  checkPlies(input.plies);
  checkGrowth(input.plies, input);
  const [n, m] = resultantsOf(input.plies, input);
  allFinite([...n, ...m], 'resultant', '');
  return {
    loadX: n[0] as LineLoad,
    loadY: n[1] as LineLoad,
    shearFlow: n[2] as LineLoad,
    momentX: m[0] as LineMoment,
    momentY: m[1] as LineMoment,
    twist: m[2] as LineMoment,
  };
}

export const hygrothermalResultantsFormula = /* @__PURE__ */ formula<
  HygrothermalResultantsInput,
  HygrothermalResultants
>({
  id: 'laminate/hygrothermal-resultants',
  title: 'Loads of temperature and moisture on a laminate',
  search: ['residual stress', 'clt'],
  compute: hygrothermalResultants,
  equation: { algorithm: 'sums over the plies of the turned stiffness times the free strain, times t and times t z' },
  inputs: { plies: growingPlies, temperatureChange, moistureChange },
  output: {
    loadX: { symbol: 'NT_x', kind: 'line load', name: 'load along x' },
    loadY: { symbol: 'NT_y', kind: 'line load', name: 'load along y' },
    shearFlow: { symbol: 'NT_xy', kind: 'line load', name: 'shear flow' },
    momentX: { symbol: 'MT_x', kind: 'line moment', name: 'moment along x' },
    momentY: { symbol: 'MT_y', kind: 'line moment', name: 'moment along y' },
    twist: { symbol: 'MT_xy', kind: 'line moment', name: 'twist' },
  },
  sources: [{ key: 'nasa-rp-1351', locator: 'section VI' }],
  evidence: { form: { tag: 'secondary', derived: 'stress of held plies integrated through the thickness' } },
  limits: [],
});

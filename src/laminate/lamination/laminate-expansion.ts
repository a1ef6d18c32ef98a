import { formula } from '../../formula/index.js';
import type { Ratio, TemperatureDifference, ThermalExpansion } from '../../quantity/index.js';
import { checkGrowth, type GrowingPly, growingPlies, resultantsOf } from './free-ply.js';
import { plateOf, respondHeld } from './plate.js';
import { allFinite, checkPlies } from './ply.js';

export interface LaminateExpansionInput {
  readonly plies: readonly GrowingPly[];
}

/** Thermal expansion of a laminate in its plane. */
export interface LaminateExpansion {
  readonly expansionX: ThermalExpansion;
  readonly expansionY: ThermalExpansion;
  readonly shearing: ThermalExpansion;
}

/**
 * Thermal expansion of a laminate that is held from bending, as round a pipe.
 *
 * $$\alpha = A^{-1} \sum \bar Q \bar\alpha\, t$$
 *
 * @param input.plies  from z = -h/2 upward, with expansions along and across [1/K] and swelling for each part of moisture
 * @returns expansion along x and y, and the shear strain for each kelvin [1/K]
 * @throws CalculationError `invalid-input`
 * @see Nettles, NASA RP-1351, 1994, section VI
 */
export function laminateExpansion({ plies }: LaminateExpansionInput): LaminateExpansion {
  const oneKelvin = { temperatureChange: 1 as TemperatureDifference, moistureChange: 0 as Ratio };
  checkPlies(plies);
  checkGrowth(plies, oneKelvin);
  const [x, y, xy] = respondHeld(plateOf(plies), resultantsOf(plies, oneKelvin)[0]);
  allFinite([x, y, xy], 'expansion', '1/K');
  return {
    expansionX: x as ThermalExpansion,
    expansionY: y as ThermalExpansion,
    shearing: xy as ThermalExpansion,
  };
}

export const laminateExpansionFormula = /* @__PURE__ */ formula<LaminateExpansionInput, LaminateExpansion>({
  id: 'laminate/laminate-expansion',
  title: 'Thermal expansion of a laminate',
  search: ['cte', 'clt'],
  compute: laminateExpansion,
  equation: { algorithm: 'strains of the laminate, held from bending, under the thermal load of one kelvin' },
  inputs: { plies: growingPlies },
  output: {
    expansionX: { symbol: 'alpha_x', kind: 'thermal expansion', name: 'expansion along x' },
    expansionY: { symbol: 'alpha_y', kind: 'thermal expansion', name: 'expansion along y' },
    shearing: { symbol: 'alpha_xy', kind: 'thermal expansion', name: 'shear strain for each kelvin' },
  },
  sources: [{ key: 'nasa-rp-1351', locator: 'section VI' }],
  evidence: { form: { tag: 'secondary', derived: 'strain at which the plies hold each other in balance' } },
  limits: [],
});

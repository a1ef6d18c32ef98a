import { frozen } from '../../numeric/frozen.js';
import type { UnitTable } from '../quantity.js';

/** Units in which a molar enthalpy is written, each as an exact ratio to the SI unit. */
export const molarEnthalpyUnits = /* @__PURE__ */ frozen({
  'J/mol': [1, 1],
  'kJ/mol': [1000, 1],
  'kcal/mol': [4184, 1],
} as const satisfies UnitTable);

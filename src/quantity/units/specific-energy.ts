import { frozen } from '../../numeric/frozen.js';
import type { UnitTable } from '../quantity.js';

/** Units in which a specific energy is written, each as an exact ratio to the SI unit. */
export const specificEnergyUnits = /* @__PURE__ */ frozen({
  'J/kg': [1, 1],
  'kJ/kg': [1000, 1],
  'J/g': [1000, 1],
} as const satisfies UnitTable);

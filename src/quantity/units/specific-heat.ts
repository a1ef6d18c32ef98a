import { frozen } from '../../numeric/frozen.js';
import type { UnitTable } from '../quantity.js';

/** Units in which a specific heat is written, each as an exact ratio to the SI unit. */
export const specificHeatUnits = /* @__PURE__ */ frozen({
  'J/(kg K)': [1, 1],
  'kJ/(kg K)': [1000, 1],
  'J/(g K)': [1000, 1],
} as const satisfies UnitTable);

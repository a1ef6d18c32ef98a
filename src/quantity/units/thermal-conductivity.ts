import { frozen } from '../../numeric/frozen.js';
import type { UnitTable } from '../quantity.js';

/** Units in which a thermal conductivity is written, each as an exact ratio to the SI unit. */
export const thermalConductivityUnits = /* @__PURE__ */ frozen({
  'W/(m K)': [1, 1],
  'mW/(m K)': [1, 1000],
} as const satisfies UnitTable);

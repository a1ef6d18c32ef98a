import { frozen } from '../../numeric/frozen.js';
import type { UnitTable } from '../quantity.js';

/** Units in which a leak severity is written, each as an exact ratio to the SI unit. */
export const leakSeverityUnits = /* @__PURE__ */ frozen({
  'Pa m^(1/2)': [1, 1],
  'MN/m^(3/2)': [1000000, 1],
  'MPa m^(1/2)': [1000000, 1],
} as const satisfies UnitTable);

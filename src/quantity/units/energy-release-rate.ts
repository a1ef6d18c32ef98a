import { frozen } from '../../numeric/frozen.js';
import type { UnitTable } from '../quantity.js';

/** Units in which an energy release rate is written, each as an exact ratio to the SI unit. */
export const energyReleaseRateUnits = /* @__PURE__ */ frozen({
  'J/m2': [1, 1],
  'kJ/m2': [1000, 1],
  'N/mm': [1000, 1],
  'in lbf/in2': [44482216152605, 254000000000],
} as const satisfies UnitTable);

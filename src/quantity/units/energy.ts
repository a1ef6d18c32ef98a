import { frozen } from '../../numeric/frozen.js';
import type { UnitTable } from '../quantity.js';

/** Units in which an energy is written, each as an exact ratio to the SI unit. */
export const energyUnits = /* @__PURE__ */ frozen({
  J: [1, 1],
  kJ: [1000, 1],
  MJ: [1000000, 1],
  'ft lbf': [3389544870828501, 2500000000000000],
} as const satisfies UnitTable);

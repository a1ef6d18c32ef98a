import { frozen } from '../../numeric/frozen.js';
import type { UnitTable } from '../quantity.js';

/** Units in which a temperature difference is written, each as an exact ratio to the SI unit. */
export const temperatureDifferenceUnits = /* @__PURE__ */ frozen({
  K: [1, 1],
  deltaC: [1, 1],
  deltaF: [5, 9],
} as const satisfies UnitTable);

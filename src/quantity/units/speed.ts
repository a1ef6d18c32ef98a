import { frozen } from '../../numeric/frozen.js';
import type { UnitTable } from '../quantity.js';

/** Units in which a speed is written, each as an exact ratio to the SI unit. */
export const speedUnits = /* @__PURE__ */ frozen({
  'm/s': [1, 1],
  'm/min': [1, 60],
  'ft/s': [3048, 10000],
  'ft/min': [3048, 600000],
} as const satisfies UnitTable);

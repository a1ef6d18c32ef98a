import { frozen } from '../../numeric/frozen.js';
import type { UnitTable } from '../quantity.js';

/** Units in which a rate constant is written, each as an exact ratio to the SI unit. */
export const rateConstantUnits = /* @__PURE__ */ frozen({
  '1/s': [1, 1],
  '1/min': [1, 60],
  '1/h': [1, 3600],
} as const satisfies UnitTable);

import { frozen } from '../../numeric/frozen.js';
import type { UnitTable } from '../quantity.js';

/** Units in which a strain is written, each as an exact ratio to the SI unit. */
export const strainUnits = /* @__PURE__ */ frozen({
  '1': [1, 1],
  'mm/mm': [1, 1],
  'in/in': [1, 1],
  '%': [1, 100],
  microstrain: [1, 1000000],
} as const satisfies UnitTable);

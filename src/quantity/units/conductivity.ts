import { frozen } from '../../numeric/frozen.js';
import type { UnitTable } from '../quantity.js';

/** Units in which a conductivity is written, each as an exact ratio to the SI unit. */
export const conductivityUnits = /* @__PURE__ */ frozen({
  'S/m': [1, 1],
  'uS/cm': [1, 10000],
  'mS/m': [1, 1000],
} as const satisfies UnitTable);

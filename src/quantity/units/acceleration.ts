import { frozen } from '../../numeric/frozen.js';
import type { UnitTable } from '../quantity.js';

/** Units in which an acceleration is written, each as an exact ratio to the SI unit. */
export const accelerationUnits = /* @__PURE__ */ frozen({
  'N/kg': [1, 1],
} as const satisfies UnitTable);

import { frozen } from '../../numeric/frozen.js';
import type { UnitTable } from '../quantity.js';

/** Units in which a ratio is written, each as an exact ratio to the SI unit. */
export const ratioUnits = /* @__PURE__ */ frozen({
  '1': [1, 1],
  '%': [1, 100],
} as const satisfies UnitTable);

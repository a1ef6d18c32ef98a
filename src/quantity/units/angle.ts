import { frozen } from '../../numeric/frozen.js';
import type { UnitTable } from '../quantity.js';

/** Units in which an angle is written, each as an exact ratio to the SI unit. */
export const angleUnits = /* @__PURE__ */ frozen({
  rad: [1, 1],
  deg: [Math.PI, 180],
} as const satisfies UnitTable);

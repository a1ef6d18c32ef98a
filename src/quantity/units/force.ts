import { frozen } from '../../numeric/frozen.js';
import type { UnitTable } from '../quantity.js';

/** Units in which a force is written, each as an exact ratio to the SI unit. */
export const forceUnits = /* @__PURE__ */ frozen({
  N: [1, 1],
  kN: [1000, 1],
  MN: [1000000, 1],
  lbf: [44482216152605, 10000000000000],
} as const satisfies UnitTable);

import { frozen } from '../../numeric/frozen.js';
import type { UnitTable } from '../quantity.js';

/** Units in which an area is written, each as an exact ratio to the SI unit. */
export const areaUnits = /* @__PURE__ */ frozen({
  m2: [1, 1],
  mm2: [1, 1000000],
  cm2: [1, 10000],
  in2: [64516, 100000000],
  ft2: [9290304, 100000000],
} as const satisfies UnitTable);

import { frozen } from '../../numeric/frozen.js';
import type { UnitTable } from '../quantity.js';

/** Units in which a gauge pressure is written, each as an exact ratio to the SI unit. */
export const gaugePressureUnits = /* @__PURE__ */ frozen({
  Pa: [1, 1],
  kPa: [1000, 1],
  MPa: [1000000, 1],
  bar: [100000, 1],
  barg: [100000, 1],
  psi: [44482216152605, 6451600000],
  psig: [44482216152605, 6451600000],
} as const satisfies UnitTable);

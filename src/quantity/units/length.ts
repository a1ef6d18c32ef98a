import { frozen } from '../../numeric/frozen.js';
import type { UnitTable } from '../quantity.js';

/** Units in which a length is written, each as an exact ratio to the SI unit. */
export const lengthUnits = /* @__PURE__ */ frozen({
  m: [1, 1],
  mm: [1, 1000],
  cm: [1, 100],
  km: [1000, 1],
  um: [1, 1000000],
  in: [254, 10000],
  ft: [3048, 10000],
  mil: [254, 10000000],
} as const satisfies UnitTable);

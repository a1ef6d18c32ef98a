import { frozen } from '../../numeric/frozen.js';
import type { UnitTable } from '../quantity.js';

/** Units in which a curvature is written, each as an exact ratio to the SI unit. */
export const curvatureUnits = /* @__PURE__ */ frozen({
  '1/m': [1, 1],
  '1/mm': [1000, 1],
  '1/in': [10000, 254],
} as const satisfies UnitTable);

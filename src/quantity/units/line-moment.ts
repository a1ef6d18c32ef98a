import { frozen } from '../../numeric/frozen.js';
import type { UnitTable } from '../quantity.js';

/** Units in which a line moment is written, each as an exact ratio to the SI unit. */
export const lineMomentUnits = /* @__PURE__ */ frozen({
  'N m/m': [1, 1],
  'N mm/mm': [1, 1],
  'kN m/m': [1000, 1],
  'lbf in/in': [44482216152605, 10000000000000],
} as const satisfies UnitTable);

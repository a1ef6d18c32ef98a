import { frozen } from '../../numeric/frozen.js';
import type { UnitTable } from '../quantity.js';

/** Units in which an extensional stiffness is written, each as an exact ratio to the SI unit. */
export const extensionalStiffnessUnits = /* @__PURE__ */ frozen({
  'N/m': [1, 1],
  'Pa m': [1, 1],
  'N/mm': [1000, 1],
  'lbf/in': [44482216152605, 254000000000],
} as const satisfies UnitTable);

import { frozen } from '../../numeric/frozen.js';
import type { UnitTable } from '../quantity.js';

/** Units in which a bending stiffness is written, each as an exact ratio to the SI unit. */
export const bendingStiffnessUnits = /* @__PURE__ */ frozen({
  'N m': [1, 1],
  'Pa m3': [1, 1],
  'N mm': [1, 1000],
  'lbf in': [1129848290276167, 10000000000000000],
} as const satisfies UnitTable);

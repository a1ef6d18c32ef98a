import { frozen } from '../../numeric/frozen.js';
import type { UnitTable } from '../quantity.js';

/** Units in which a moment is written, each as an exact ratio to the SI unit. */
export const momentUnits = /* @__PURE__ */ frozen({
  'N m': [1, 1],
  'N mm': [1, 1000],
  'kN m': [1000, 1],
  'lbf in': [1129848290276167, 10000000000000000],
  'lbf ft': [3389544870828501, 2500000000000000],
} as const satisfies UnitTable);

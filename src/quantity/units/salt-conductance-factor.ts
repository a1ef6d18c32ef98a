import { frozen } from '../../numeric/frozen.js';
import type { UnitTable } from '../quantity.js';

/** Units in which a salt conductance factor is written, each as an exact ratio to the SI unit. */
export const saltConductanceFactorUnits = /* @__PURE__ */ frozen({
  'kg/(m2 S)': [1, 1],
  'g/(m2 S)': [1, 1000],
} as const satisfies UnitTable);

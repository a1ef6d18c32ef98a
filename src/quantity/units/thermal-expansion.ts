import { frozen } from '../../numeric/frozen.js';
import type { UnitTable } from '../quantity.js';

/** Units in which a thermal expansion is written, each as an exact ratio to the SI unit. */
export const thermalExpansionUnits = /* @__PURE__ */ frozen({
  '1/K': [1, 1],
  '1/degC': [1, 1],
  '1e-6/K': [1, 1000000],
  'um/(m K)': [1, 1000000],
  '1/degF': [9, 5],
  '1e-6/degF': [9, 5000000],
} as const satisfies UnitTable);

import { frozen } from '../../numeric/frozen.js';
import type { UnitTable } from '../quantity.js';

/** Units in which a molar mass is written, each as an exact ratio to the SI unit. */
export const molarMassUnits = /* @__PURE__ */ frozen({
  'kg/mol': [1, 1],
  'g/mol': [1, 1000],
} as const satisfies UnitTable);

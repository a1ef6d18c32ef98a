import { frozen } from '../../numeric/frozen.js';
import type { UnitTable } from '../quantity.js';

/** Units in which a molar heat capacity is written, each as an exact ratio to the SI unit. */
export const molarHeatCapacityUnits = /* @__PURE__ */ frozen({
  'J/(mol K)': [1, 1],
  'kJ/(mol K)': [1000, 1],
  'cal/(mol K)': [4184, 1000],
} as const satisfies UnitTable);

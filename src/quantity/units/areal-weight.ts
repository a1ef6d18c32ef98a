import { frozen } from '../../numeric/frozen.js';
import type { UnitTable } from '../quantity.js';

/** Units in which an areal weight is written, each as an exact ratio to the SI unit. */
export const arealWeightUnits = /* @__PURE__ */ frozen({
  'kg/m2': [1, 1],
  'g/m2': [1, 1000],
  'mg/m2': [1, 1000000],
  'oz/yd2': [45359237, 1337803776],
} as const satisfies UnitTable);

import { frozen } from '../../numeric/frozen.js';
import type { UnitTable } from '../quantity.js';

/** Units in which a mass is written, each as an exact ratio to the SI unit. */
export const massUnits = /* @__PURE__ */ frozen({
  kg: [1, 1],
  g: [1, 1000],
  mg: [1, 1000000],
  t: [1000, 1],
  lb: [45359237, 100000000],
  oz: [45359237, 1600000000],
} as const satisfies UnitTable);

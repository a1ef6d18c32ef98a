import { frozen } from '../../numeric/frozen.js';
import type { UnitTable } from '../quantity.js';

/** Units in which a temperature is written, each as an exact ratio to the SI unit. */
export const temperatureUnits = /* @__PURE__ */ frozen({
  K: [1, 1],
  degC: [1, 1, 273.15],
  degF: [5, 9, 459.67],
} as const satisfies UnitTable);

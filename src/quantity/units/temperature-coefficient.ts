import { frozen } from '../../numeric/frozen.js';
import type { UnitTable } from '../quantity.js';

/** Units in which a temperature coefficient is written, each as an exact ratio to the SI unit. */
export const temperatureCoefficientUnits = /* @__PURE__ */ frozen({
  '1/K': [1, 1],
  '%/K': [1, 100],
} as const satisfies UnitTable);

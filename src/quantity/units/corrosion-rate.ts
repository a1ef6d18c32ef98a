import { frozen } from '../../numeric/frozen.js';
import type { UnitTable } from '../quantity.js';

/** Units in which a corrosion rate is written, each as an exact ratio to the SI unit. */
export const corrosionRateUnits = /* @__PURE__ */ frozen({
  'm/s': [1, 1],
  'mm/year': [1, 31557600000],
  'um/year': [1, 31557600000000],
  'in/year': [254, 315576000000],
  'mil/year': [254, 315576000000000],
} as const satisfies UnitTable);

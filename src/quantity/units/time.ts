import { frozen } from '../../numeric/frozen.js';
import type { UnitTable } from '../quantity.js';

/** Units in which a time is written, each as an exact ratio to the SI unit. */
export const timeUnits = /* @__PURE__ */ frozen({
  s: [1, 1],
  min: [60, 1],
  h: [3600, 1],
  day: [86400, 1],
  year: [31557600, 1],
} as const satisfies UnitTable);

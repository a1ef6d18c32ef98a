import { frozen } from '../../numeric/frozen.js';
import type { UnitTable } from '../quantity.js';

/** Units in which a volume flow is written, each as an exact ratio to the SI unit. */
export const volumeFlowUnits = /* @__PURE__ */ frozen({
  'm3/s': [1, 1],
  'L/s': [1, 1000],
  'L/min': [1, 60000],
  'm3/h': [1, 3600],
  'gal/min': [3785411784, 60000000000000],
} as const satisfies UnitTable);

import { frozen } from '../../numeric/frozen.js';
import type { UnitTable } from '../quantity.js';

/** Units in which a mass flow is written, each as an exact ratio to the SI unit. */
export const massFlowUnits = /* @__PURE__ */ frozen({
  'kg/s': [1, 1],
  'kg/h': [1, 3600],
  'g/min': [1, 60000],
  'kg/min': [1, 60],
  'lb/h': [45359237, 360000000000],
} as const satisfies UnitTable);

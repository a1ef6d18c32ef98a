import type { UnitTable } from '../quantity.js';

/** Units in which a conductivity is written, each as an exact ratio to the SI unit. */
export const conductivityUnits = {
  'S/m': [1, 1],
  'uS/cm': [1, 10000],
  'mS/m': [1, 1000],
} as const satisfies UnitTable;

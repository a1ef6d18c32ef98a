import type { UnitTable } from '../quantity.js';

/** Units in which a temperature coefficient is written, each as an exact ratio to the SI unit. */
export const temperatureCoefficientUnits = {
  '1/K': [1, 1],
  '%/K': [1, 100],
} as const satisfies UnitTable;

import { frozen } from '../../numeric/frozen.js';
import type { UnitTable } from '../quantity.js';

/** Units in which an absolute pressure is written, each as an exact ratio to the SI unit. */
export const absolutePressureUnits = /* @__PURE__ */ frozen({
  Pa: [1, 1],
  kPa: [1000, 1],
  MPa: [1000000, 1],
  bar: [100000, 1],
  hPa: [100, 1],
  mbar: [100, 1],
  bara: [100000, 1],
  atm: [101325, 1],
  psi: [44482216152605, 6451600000],
  psia: [44482216152605, 6451600000],
} as const satisfies UnitTable);

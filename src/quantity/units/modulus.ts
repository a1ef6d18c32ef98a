import { frozen } from '../../numeric/frozen.js';
import type { UnitTable } from '../quantity.js';

/** Units in which a modulus is written, each as an exact ratio to the SI unit. */
export const modulusUnits = /* @__PURE__ */ frozen({
  Pa: [1, 1],
  kPa: [1000, 1],
  MPa: [1000000, 1],
  'N/mm2': [1000000, 1],
  GPa: [1000000000, 1],
  psi: [44482216152605, 6451600000],
  ksi: [44482216152605, 6451600],
  Msi: [222411080763025, 32258],
} as const satisfies UnitTable);

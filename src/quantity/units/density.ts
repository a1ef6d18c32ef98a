import { frozen } from '../../numeric/frozen.js';
import type { UnitTable } from '../quantity.js';

/** Units in which a density is written, each as an exact ratio to the SI unit. */
export const densityUnits = /* @__PURE__ */ frozen({
  'kg/m3': [1, 1],
  'g/cm3': [1000, 1],
  'kg/L': [1000, 1],
  'g/m3': [1, 1000],
  'lb/in3': [56699046250, 2048383],
  'lb/ft3': [28349523125, 1769802912],
  'lb/gal': [736351250, 6145149],
} as const satisfies UnitTable);

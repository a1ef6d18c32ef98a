import { frozen } from '../../numeric/frozen.js';
import type { UnitTable } from '../quantity.js';

/** Units in which a volume is written, each as an exact ratio to the SI unit. */
export const volumeUnits = /* @__PURE__ */ frozen({
  m3: [1, 1],
  mm3: [1, 1000000000],
  cm3: [1, 1000000],
  mL: [1, 1000000],
  L: [1, 1000],
  in3: [16387064, 1000000000000],
  ft3: [28316846592, 1000000000000],
  gal: [3785411784, 1000000000000],
  'fl oz': [3785411784, 128000000000000],
} as const satisfies UnitTable);

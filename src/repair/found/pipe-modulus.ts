import type { Modulus } from '../../quantity/index.js';
import { assumeQuantity, type Workbook } from '../job/workbook.js';

/** Modulus of the pipe: as given, or that of carbon steel, listed as assumed. */
export function pipeModulus(work: Workbook): Modulus {
  return assumeQuantity(work, work.case.pipe.material.modulus, {
    name: 'modulus of the pipe',
    kind: 'modulus',
    value: 207e9 as Modulus,
    tag: 'practice',
    because: 'the usual figure for carbon steel',
  });
}

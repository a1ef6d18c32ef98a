import { reaches } from '../../numeric/index.js';
import type { RepairCase } from '../case/case.js';
import type { LaminateDesign } from '../design/design.js';

/**
 * The last check of every design: by no criterion does what is laid resist less than the design pressure. A thickness and
 * its resistance are two formulas; where they part, the fault is the library's, and no design comes out of it.
 */
export function holdPressure({ service }: RepairCase, { resistance }: LaminateDesign): void {
  for (const { criterion, value } of resistance.candidates) {
    if (!reaches(value, service.designPressure))
      throw new Error(
        `by "${criterion}" the designed laminate resists ${value} Pa, less than the design pressure of ${service.designPressure} Pa: a fault of this library`,
      );
  }
}

import { decide, heading, step } from '../../formula/index.js';
import { equivalentAxialForce } from '../../laminate/index.js';
import type { Force, Length, Modulus, Moment } from '../../quantity/index.js';
import type { RepairCase } from '../case/case.js';
import type { AsFound, Candidate, Unavailable } from '../design/design.js';
import type { Workbook } from '../job/workbook.js';
import type { Strains } from '../limits/strains.js';

/** What every thickness method works on. */
export interface ThicknessJob {
  readonly found: AsFound;
  readonly strains: Strains;
  /** Diameter that the laminate goes round: over the filler. */
  readonly wrappedDiameter: Length;
  /** Moduli of the laminate: the lower ones of test and design temperature, where both are given. */
  readonly hoopModulus: Modulus;
  readonly axialModulus: Modulus;
  /** The stated force along the pipe: a pull above 0, a push below. */
  readonly externalForce: Force;
  /** End load of the closed pipe, with the stated axial force. */
  readonly axialForce: Force;
}

/** Thickness by one method: a candidate for each way it can govern, or what is missing. */
export type MethodOutcome = readonly Candidate<Length>[] | Unavailable;

/** Sets up the loads that the thickness methods share. */
export function prepareThickness(work: Workbook, found: AsFound, strains: Strains): ThicknessJob {
  const { recorder, case: repairCase } = work;
  const { filler, laminate, service } = repairCase;
  heading(recorder, 'Loads on the laminate');
  const over = filler === 'none' ? 0 : filler.thicknessOverDefect;
  const wrappedDiameter = (found.outsideDiameter + 2 * over) as Length;
  if (over > 0) {
    decide(
      recorder,
      'hoop load taken on the diameter over the filler',
      'the diameter of the pipe and twice the filler over the defect: the pressure acts on the larger circle once the metal under it is gone',
    );
  }
  const externalForce = externalForceOf(repairCase);
  const axialForce = step(recorder, 'laminate/equivalent-axial-force', equivalentAxialForce, {
    pressure: service.designPressure,
    outsideDiameter: found.outsideDiameter,
    axialForce: externalForce,
    shearForce: 0 as Force,
    bendingMoment: 0 as Moment,
    torque: 0 as Moment,
  });
  const { hoopModulus, axialModulus, atDesignTemperature: hot } = laminate;
  return {
    found,
    strains,
    wrappedDiameter,
    externalForce,
    axialForce,
    hoopModulus: Math.min(hoopModulus, hot?.hoopModulus ?? hoopModulus) as Modulus,
    axialModulus: Math.min(axialModulus, hot?.axialModulus ?? axialModulus) as Modulus,
  };
}

/** The stated force along the pipe; none is a force of zero. */
export function externalForceOf({ loads }: RepairCase): Force {
  return loads.axialForce === 'none' ? (0 as Force) : loads.axialForce;
}

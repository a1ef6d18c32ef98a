import { step } from '../../formula/index.js';
import type { Force, GaugePressure, Length, Moment, Stress } from '../../quantity/index.js';
import {
  aimedTension,
  contactPressure,
  fastenerTension,
  fastenerTorque,
  strapStress,
  tensionFromTorque,
} from '../../seal/index.js';
import type { Seal } from '../case/case.js';
import type { Workbook } from '../job/workbook.js';

/** The tension that holds the pad, the torque that sets it, and what strap and pipe then bear. */
export interface Fastened {
  readonly fastenerTension: Force;
  readonly torque: Moment;
  readonly strapStress: Stress;
  readonly contactPressure: GaugePressure;
}

/** The torque whose low end of scatter still gives the tension; stresses are taken at its high end. */
export function tighten(
  { recorder }: Workbook,
  { band, fastener }: Seal,
  outsideDiameter: Length,
  tensionAtPad: Force,
): Fastened {
  const { nutFactor, threadDiameter, scatter } = fastener;
  const needed = step(recorder, 'seal/fastener-tension', fastenerTension, {
    padTension: tensionAtPad,
    friction: band.friction,
  });
  const aim = step(recorder, 'seal/aimed-tension', aimedTension, { neededTension: needed, scatter });
  const torque = step(recorder, 'seal/fastener-torque', fastenerTorque, { tension: aim, nutFactor, threadDiameter });
  const spread = step(recorder, 'seal/tension-from-torque', tensionFromTorque, {
    torque,
    nutFactor,
    threadDiameter,
    scatter,
  });
  return {
    fastenerTension: needed,
    torque,
    strapStress: step(recorder, 'seal/strap-stress', strapStress, {
      tension: spread.high,
      bandWidth: band.width,
      bandThickness: band.thickness,
    }),
    contactPressure: step(recorder, 'seal/contact-pressure', contactPressure, {
      tension: spread.high,
      diameter: outsideDiameter,
      bandWidth: band.width,
    }),
  };
}

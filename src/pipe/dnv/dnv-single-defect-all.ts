import { atMost, positive } from '../../formula/index.js';
import type { Stress } from '../../quantity/index.js';
import { checkSurvey, type MetalLossSurvey, refuseRow } from '../remaining-strength/metal-loss-survey.js';

export interface DnvSurvey extends MetalLossSurvey {
  /** Specified minimum tensile strength [Pa]. */
  readonly tensileStrength: Stress;
  /** Factor of the edition; 1 where it is left out. */
  readonly editionFactor?: number;
}

/**
 * Capacity of every row of a survey by DNV-RP-F101, single defect: `dnvSingleDefect`, bit for bit, without a call for
 * each row.
 *
 * @param survey  pipe [SI], tensile strength [Pa], edition factor (1 by default), and the depths and lengths of its losses [m]
 * @param out     takes the failure pressures [Pa]; as long as the lists
 * @returns `out`
 * @throws CalculationError for the first row that is refused, by its number from 0; the rows before it have been written
 */
export function dnvAll(survey: DnvSurvey, out: Float64Array): Float64Array {
  const { outsideDiameter: D, wallThickness: t, tensileStrength: S, editionFactor: k = 1, depth, length } = survey;
  checkSurvey(survey, out);
  positive(S, 'tensileStrength', 'Pa');
  positive(k, 'editionFactor', '');
  atMost(k, 1.05, 'that of the editions from 2017 on', 'editionFactor', '');
  const sound = k * S * ((2 * t) / (D - t));
  const deepest = 0.85 * t;
  for (let row = 0; row < out.length; row++) {
    const d = depth[row] as number;
    const L = length[row] as number;
    if (!(d >= 0 && d <= deepest && L > 0 && L < Number.POSITIVE_INFINITY)) refuseRow(survey, row, 0.85, 'DNV-RP-F101');
    const x = d / t;
    out[row] = (sound * (1 - x)) / (1 - x / Math.sqrt(1 + 0.31 * ((L / D) * (L / t))));
  }
  return out;
}

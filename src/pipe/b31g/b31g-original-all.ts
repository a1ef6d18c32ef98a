import { positive } from '../../formula/index.js';
import { checkSurvey, type FlowStressSurvey, refuseRow } from '../remaining-strength/metal-loss-survey.js';

/**
 * Failure pressure of every row of a survey by original B31G: `b31gOriginal`, bit for bit, without a call for each row.
 *
 * @param survey  pipe [SI], flow stress [Pa], and the depths and lengths of its losses [m]
 * @param out     takes the failure pressures [Pa]; as long as the lists
 * @returns `out`
 * @throws CalculationError for the first row that is refused, by its number from 0; the rows before it have been written
 */
export function b31gAll(survey: FlowStressSurvey, out: Float64Array): Float64Array {
  const { outsideDiameter: D, wallThickness: t, flowStress: S, depth, length } = survey;
  checkSurvey(survey, out);
  positive(S, 'flowStress', 'Pa');
  const sound = S * ((2 * t) / D);
  const deepest = 0.8 * t;
  for (let row = 0; row < out.length; row++) {
    const d = depth[row] as number;
    const L = length[row] as number;
    if (!(d >= 0 && d <= deepest && L > 0 && L < Number.POSITIVE_INFINITY)) refuseRow(survey, row, 0.8, 'ASME B31G');
    const x = d / t;
    const z = (L / D) * (L / t);
    const loss = (2 * x) / 3;
    out[row] = z > 20 ? sound * (1 - x) : (sound * (1 - loss)) / (1 - loss / Math.sqrt(1 + 0.8 * z));
  }
  return out;
}

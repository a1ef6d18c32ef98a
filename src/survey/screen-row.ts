import { isCalculationError, oneOf, positive, refuse } from '../formula/index.js';
import {
  b31gOriginal,
  defectDepthAtEndOfLife,
  defectLengthAtEndOfLife,
  flowStressMultiple,
  flowStressOffset,
  hoopStress,
  modifiedB31g,
  safePressure,
} from '../pipe/index.js';
import { LEAST_WALL } from '../pipe/remaining-strength/least-wall-pressure.js';
import type { GaugePressure, Length, Time } from '../quantity/index.js';
import type { ScreenedRow, ScreeningOptions, SurveyRow } from './survey-row.js';
import { unusualValues } from './unusual.js';

/** Halvings of the time in which a row falls below its design pressure: a year to less than a second. */
const HALVINGS = 30;

/**
 * Screens one row of a survey: failure and safe pressure today and at the end of life, and how long the safe pressure stays
 * above the design pressure. Every number is that of a formula with its guards; what they refuse becomes the status of the row. A row is never `sound` by
 * a value outside its usual span.
 *
 * @param row one metal loss and the pipe that it is on
 * @param options safety factor, life and method
 * @throws CalculationError `invalid-input` for options that no row can be screened by
 */
export function screenRow(row: SurveyRow, options: ScreeningOptions): ScreenedRow {
  checkScreening(options);
  return screened(row, options);
}

/**
 * Refuses options that no row can be screened by.
 *
 * @internal
 * @throws CalculationError `invalid-input`
 */
export function checkScreening({
  safetyFactor,
  life,
  method = 'lowest',
  flowStress = '1.1 SMYS',
}: ScreeningOptions): void {
  oneOf(method, ['lowest', 'original B31G', 'modified B31G'], 'method');
  oneOf(flowStress, ['1.1 SMYS', 'SMYS + 69 MPa'], 'flowStress');
  positive(life, 'life', 's');
  if (Number.isFinite(safetyFactor) && safetyFactor >= 1) return;
  const constraint = 'must be a finite number, 1 or above';
  refuse({ code: 'invalid-input', parameter: 'safetyFactor', value: safetyFactor, unit: '', constraint });
}

/**
 * As `screenRow`, for options that are checked already.
 *
 * @internal
 */
export function screened(row: SurveyRow, options: ScreeningOptions): ScreenedRow {
  const unusual = unusualValues(row);
  const said = unusual.length === 0 ? {} : { unusual };
  if (unusual.length > 0 && options.strict === true) return { status: 'refused', because: STRICT, ...said };
  try {
    const found = judged(row, options);
    return unusual.length > 0 && found.status === 'sound'
      ? { ...found, status: 'to check', ...said }
      : { ...found, ...said };
  } catch (error) {
    if (!isCalculationError(error)) throw error;
    return { status: 'refused', because: error.message, ...said };
  }
}

const STRICT = 'a value outside its usual span is refused where a survey is held strictly';

function judged(row: SurveyRow, options: ScreeningOptions): ScreenedRow {
  const { outsideDiameter, wallThickness, yieldStrength, designPressure } = row;
  const { defectDepth, defectLength, depthRate, lengthRate } = row;
  const { life } = options;
  positive(designPressure, 'designPressure', 'Pa');
  positive(wallThickness, 'wallThickness', 'm');
  if (hoopStress({ pressure: designPressure, outsideDiameter, wallThickness }) > yieldStrength)
    return { status: 'refused', because: YIELDS };
  const depthAtEndOfLife = defectDepthAtEndOfLife({ defectDepth, rate: depthRate, life });
  const lengthAtEndOfLife = defectLengthAtEndOfLife({ defectLength, rate: lengthRate, life });
  const grown = { depthAtEndOfLife, lengthAtEndOfLife };
  if (isTooDeep(defectDepth, row)) return { status: 'too deep', ...grown, timeLeft: 0 as Time, because: TODAY };
  const { failurePressure, safePressure: safe } = pressuresAt(row, defectDepth, defectLength, options);
  const known = { failurePressure, safePressure: safe, ...grown };
  if (isTooDeep(depthAtEndOfLife, row))
    return { status: 'too deep', ...known, timeLeft: timeUntilBelow(row, options), because: AT_END };
  const { safePressure: atEnd } = pressuresAt(row, depthAtEndOfLife, lengthAtEndOfLife, options);
  const holds = atEnd >= designPressure && safe >= designPressure;
  const timeLeft = holds ? life : timeUntilBelow(row, options);
  return { status: holds ? 'sound' : 'repair', ...known, safePressureAtEndOfLife: atEnd, timeLeft };
}

/** Of the wall, to which both methods go. */
const DEEPEST = 0.8;

const YIELDS = 'the sound pipe itself is above its yield strength at the design pressure: one of the two is wrong';
const TODAY =
  'the loss is deeper than 0.8 of the wall or leaves less than 1.3 mm, beyond what the methods reach: repair or replace';
const AT_END =
  'by the end of life the loss is deeper than 0.8 of the wall or leaves less than 1.3 mm, beyond what the methods reach';

/** A loss through the whole wall is one too: a leak is never a row that is merely refused. */
function isTooDeep(depth: Length, { wallThickness }: SurveyRow): boolean {
  return depth > DEEPEST * wallThickness || wallThickness - depth < LEAST_WALL;
}

interface Pressures {
  readonly failurePressure: GaugePressure;
  readonly safePressure: GaugePressure;
}

function pressuresAt(
  { outsideDiameter, wallThickness, yieldStrength }: SurveyRow,
  defectDepth: Length,
  defectLength: Length,
  { method = 'lowest', flowStress: choice, safetyFactor }: ScreeningOptions,
): Pressures {
  // The original method has 1.1 SMYS as its own.
  const own = flowStressMultiple({ yieldStrength });
  const chosen = choice === 'SMYS + 69 MPa' ? flowStressOffset({ yieldStrength }) : own;
  const original = { outsideDiameter, wallThickness, defectDepth, defectLength, flowStress: own };
  const modified = { outsideDiameter, wallThickness, defectDepth, defectLength, flowStress: chosen };
  const failurePressure =
    method === 'original B31G'
      ? b31gOriginal(original)
      : method === 'modified B31G'
        ? modifiedB31g(modified)
        : (Math.min(b31gOriginal(original), modifiedB31g(modified)) as GaugePressure);
  // No cap by a rating: rows are ranked by how far they lie above their design pressure too.
  const safe = safePressure({ failurePressure, safetyFactor, maximumPressure: failurePressure });
  return { failurePressure, safePressure: safe };
}

/** The last moment at which the row was seen to hold: never later than the true one. */
function timeUntilBelow(row: SurveyRow, options: ScreeningOptions): Time {
  if (!holdsAt(row, options, 0 as Time)) return 0 as Time;
  let [holds, fails] = [0, options.life as number];
  for (let halving = 0; halving < HALVINGS; halving++) {
    const middle = (holds + fails) / 2;
    if (holdsAt(row, options, middle as Time)) holds = middle;
    else fails = middle;
  }
  return holds as Time;
}

function holdsAt(row: SurveyRow, options: ScreeningOptions, life: Time): boolean {
  const depth = defectDepthAtEndOfLife({ defectDepth: row.defectDepth, rate: row.depthRate, life });
  if (isTooDeep(depth, row)) return false;
  const length = defectLengthAtEndOfLife({ defectLength: row.defectLength, rate: row.lengthRate, life });
  return pressuresAt(row, depth, length, options).safePressure >= row.designPressure;
}

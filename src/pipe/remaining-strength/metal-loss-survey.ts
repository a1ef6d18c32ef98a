import { refuse } from '../../formula/index.js';
import type { Length, Stress } from '../../quantity/index.js';
import { checkDepth, checkPipeWall } from './part-wall-defect.js';

/** The metal losses of one pipe, row by row in SI, as an inspection run lists them. */
export interface MetalLossSurvey {
  /** Outside diameter [m]. */
  readonly outsideDiameter: Length;
  /** Nominal wall [m]. */
  readonly wallThickness: Length;
  /** Depth of each loss [m]. */
  readonly depth: Float64Array;
  /** Length of each loss along the pipe [m]. */
  readonly length: Float64Array;
}

/** A survey for the methods on a flow stress. */
export interface FlowStressSurvey extends MetalLossSurvey {
  /** Flow stress of the steel [Pa]. */
  readonly flowStress: Stress;
}

/** Refuses a pipe that cannot be, and lists of different length. */
export function checkSurvey(survey: MetalLossSurvey, out: Float64Array): void {
  checkPipeWall(survey.outsideDiameter, survey.wallThickness);
  const rows = survey.depth.length;
  if (survey.length.length !== rows) wrongLength('length', survey.length.length, rows);
  if (out.length !== rows) wrongLength('out', out.length, rows);
}

function wrongLength(parameter: string, value: number, rows: number): never {
  const constraint = `must have as many rows as depth, ${rows}`;
  refuse({ code: 'invalid-input', parameter, value, unit: 'rows', constraint });
}

/** Says what is wrong with a row that a loop has stopped at. */
export function refuseRow(survey: MetalLossSurvey, row: number, deepest: number, source: string): never {
  checkDepth(survey.depth[row] as number, survey.wallThickness, deepest, `depth[${row}]`, source);
  const constraint = 'must be a finite number above 0';
  const value = survey.length[row] as number;
  refuse({ code: 'invalid-input', parameter: `length[${row}]`, value, unit: 'm', constraint });
}

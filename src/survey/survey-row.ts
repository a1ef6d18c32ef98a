import type { CorrosionRate, GaugePressure, Length, Line, Stress, Time } from '../quantity/index.js';

/** One metal loss of a survey and the pipe that it is on. */
export interface SurveyRow {
  /** Of the pipe. */
  readonly outsideDiameter: Length;
  /** Nominal wall of the sound pipe. */
  readonly wallThickness: Length;
  /** Specified minimum yield strength. */
  readonly yieldStrength: Stress;
  /** What the pipe shall carry. */
  readonly designPressure: GaugePressure;
  /** Deepest point, today. */
  readonly defectDepth: Length;
  /** Along the pipe, today. */
  readonly defectLength: Length;
  /** Growth of the depth; 0 where it is known not to grow. */
  readonly depthRate: CorrosionRate;
  /** Growth of the length at each end; 0 where it is known not to grow. */
  readonly lengthRate: CorrosionRate;
}

/** By which method the failure pressure is found: the lower of the two where none is named. */
export type ScreeningMethod = 'lowest' | 'original B31G' | 'modified B31G';

/** How a survey is screened. */
export interface ScreeningOptions {
  /** Failure pressure over safe pressure: 1 or above; no default, since it belongs to the line. */
  readonly safetyFactor: number;
  /** How long the pipe shall still serve. */
  readonly life: Time;
  /** Method of the failure pressure; the lower of the two where it is left out. */
  readonly method?: ScreeningMethod | undefined;
  /** Of the yield strength; 1.1 SMYS where it is left out. */
  readonly flowStress?: '1.1 SMYS' | 'SMYS + 69 MPa' | undefined;
  /** Refuses a row with a value outside its usual span. */
  readonly strict?: boolean | undefined;
}

/** What a row came to; `to check` where it would be sound by a value that is more often a slip than right. */
export type RowStatus = 'sound' | 'to check' | 'repair' | 'too deep' | 'refused';

/** One row as screened. What a method does not give is absent; nothing is guessed in its place. */
export interface ScreenedRow {
  /** What the row came to. */
  readonly status: RowStatus;
  /** Predicted today, without a safety factor. */
  readonly failurePressure?: GaugePressure;
  /** Failure pressure today over the safety factor. */
  readonly safePressure?: GaugePressure;
  /** Grown over the life; it may exceed the wall, which then is gone. */
  readonly depthAtEndOfLife?: Length;
  /** Grown over the life. */
  readonly lengthAtEndOfLife?: Length;
  /** Over the safety factor, with the loss as grown; absent where it is too deep by then. */
  readonly safePressureAtEndOfLife?: GaugePressure;
  /** Until the safe pressure falls below the design pressure, or the loss is too deep for the method; the life where neither comes before its end. */
  readonly timeLeft?: Time;
  /** Why a row is refused, or too deep. */
  readonly because?: string;
  /** Each value outside its usual span, as a sentence; absent where there is none. */
  readonly unusual?: readonly Line[];
}

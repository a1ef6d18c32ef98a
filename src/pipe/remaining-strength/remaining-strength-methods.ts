import type { Recorder } from '../../formula/index.js';
import type { Force, GaugePressure, Length, Moment, Stress } from '../../quantity/index.js';
import type { DepthPoint } from './depth-profile.js';
import type { PartWallDefect } from './part-wall-defect.js';

/** The remaining-strength methods, by the names of the documents that they are from: every text and every door says these. */
export const remainingStrengthMethods = [
  'original B31G',
  'modified B31G',
  'effective area',
  'DNV-RP-F101',
  'API 579-1 Level 1',
  'API 579-1 Level 2',
] as const;

/** A method for the remaining strength, by the name of its document. */
export type RemainingStrengthMethod = (typeof remainingStrengthMethods)[number];

/** What counts beside the methods, whatever a case names. */
export const ACROSS = 'axial stress over the width';
export const LEAST_WALL_ALL_ROUND = 'least wall all round';

/** Everything that a safe pressure may come from: no case names or leaves out the last two. */
export const remainingStrengthCriteria = [...remainingStrengthMethods, ACROSS, LEAST_WALL_ALL_ROUND] as const;

/** What a safe pressure may come from: a method, or what counts beside every one. */
export type RemainingStrengthCriterion = (typeof remainingStrengthCriteria)[number];

/** How the flow stress of modified B31G and of the effective area is made; original B31G has 1.1 SMYS as its own. */
export const flowStressChoices = ['1.1 SMYS', 'SMYS + 69 MPa', '(SMYS + SMTS) / 2'] as const;

/** How the flow stress is made of the specified strengths. */
export type FlowStressChoice = (typeof flowStressChoices)[number];

export interface RemainingStrengthInput extends PartWallDefect {
  /** Specified minimum yield strength [Pa]. */
  readonly yieldStrength: Stress;
  /** Specified minimum tensile strength [Pa]. */
  readonly tensileStrength?: Stress | undefined;
  /** MAOP or MAWP of the sound pipe; no safe pressure is above it. */
  readonly maximumPressure: GaugePressure;
  /** Round the pipe; all round where it is left out. */
  readonly defectWidth?: Length | undefined;
  /** Tension along the pipe beside that of the pressure; none where it is left out. */
  readonly axialForce?: Force | undefined;
  /** Bending moment on the pipe [N m]. */
  readonly bendingMoment?: Moment | undefined;
  /** Depths along the pipe, over the whole defect and down to `defectDepth`: opens the methods that search a profile. */
  readonly profile?: readonly DepthPoint[] | undefined;
  /** To the nearest structural discontinuity [m]. */
  readonly distanceToDiscontinuity?: Length | undefined;
  /** To the nearest thing on the pipe, which need not be a discontinuity [m]: far enough, it shows that none is too near. */
  readonly distanceToAttachment?: Length | undefined;
  /** The method to be used; by default the lowest of those inside their limits. */
  readonly method?: RemainingStrengthMethod | undefined;
  /** 1.1 SMYS by default: the lower of the usual two for every grade under 690 MPa. */
  readonly flowStress?: FlowStressChoice | undefined;
  /** By default the larger of 1/designFactor and 1.25. */
  readonly safetyFactor?: number | undefined;
  /** Design factor of the pipeline code. */
  readonly designFactor?: number | undefined;
}

/** A method inside its limits. The API 579-1 methods reduce the working pressure and know no failure pressure. */
export interface MethodInside {
  /** The method. */
  readonly method: RemainingStrengthCriterion;
  /** It covers this loss. */
  readonly inside: true;
  /** Pressure at which the pipe fails by it [Pa]. */
  readonly failurePressure?: GaugePressure;
  /** That pressure over the safety factor [Pa]. */
  readonly safePressure: GaugePressure;
  /** What it says beside the number. */
  readonly notes: readonly string[];
}

/** A method that cannot be used here, and why. */
export interface MethodOutside {
  /** The method. */
  readonly method: RemainingStrengthCriterion;
  /** It does not cover this loss. */
  readonly inside: false;
  /** Why not, in a sentence. */
  readonly because: string;
}

/** A method inside its limits with its pressures, or outside them with the reason. */
export type MethodResult = MethodInside | MethodOutside;

/** What the methods are run on: the input with its flow stress and safety factor settled. */
export interface RemainingStrengthJob {
  readonly input: RemainingStrengthInput;
  readonly recorder: Recorder | undefined;
  readonly flowStress: FlowStressChoice;
  readonly safetyFactor: number;
}

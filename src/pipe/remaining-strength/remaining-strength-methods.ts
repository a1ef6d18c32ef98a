import { isCalculationError, type Recorder, refuse, step } from '../../formula/index.js';
import type { GaugePressure, Length, Stress } from '../../quantity/index.js';
import { foliasApi579BeyondRange } from '../api579/folias-api579.js';
import { localMetalLoss } from '../api579/local-metal-loss.js';
import { localMetalLossProfile } from '../api579/local-metal-loss-profile.js';
import { b31gOriginal, b31gOriginalShallow } from '../b31g/b31g-original.js';
import { effectiveArea } from '../b31g/effective-area.js';
import { modifiedB31g } from '../b31g/modified-b31g.js';
import { dnvSingleDefect } from '../dnv/dnv-single-defect.js';
import type { DepthPoint } from './depth-profile.js';
import { flowStressMean } from './flow-stress-mean.js';
import { flowStressMultiple } from './flow-stress-multiple.js';
import { flowStressOffset, flowStressOffsetBeyondRange } from './flow-stress-offset.js';
import type { PartWallDefect } from './part-wall-defect.js';
import { safePressure } from './safe-pressure.js';

/** The remaining-strength methods, by the name of their formula. */
export type RemainingStrengthMethod =
  | 'b31g-original'
  | 'modified-b31g'
  | 'effective-area'
  | 'dnv-single-defect'
  | 'local-metal-loss'
  | 'local-metal-loss-profile';

export const remainingStrengthMethods: readonly RemainingStrengthMethod[] = [
  'b31g-original',
  'modified-b31g',
  'effective-area',
  'dnv-single-defect',
  'local-metal-loss',
  'local-metal-loss-profile',
];

/** How the flow stress of modified B31G and of the effective area is made; original B31G has 1.1 yield as its own. */
export type FlowStressChoice = '1.1 yield' | 'yield plus 69 MPa' | 'mean of yield and tensile';

export const flowStressChoices: readonly FlowStressChoice[] = [
  '1.1 yield',
  'yield plus 69 MPa',
  'mean of yield and tensile',
];

export interface RemainingStrengthInput extends PartWallDefect {
  readonly yieldStrength: Stress;
  readonly tensileStrength?: Stress | undefined;
  /** MAOP or MAWP of the sound pipe; no safe pressure is above it. */
  readonly maximumPressure: GaugePressure;
  /** Depths along the pipe, none above `defectDepth`: opens the methods that search a profile. */
  readonly profile?: readonly DepthPoint[] | undefined;
  readonly distanceToDiscontinuity?: Length | undefined;
  /** The method to be used; by default the lowest of those inside their limits. */
  readonly method?: RemainingStrengthMethod | undefined;
  /** 1.1 yield by default: the lower of the usual two for every grade under 690 MPa. */
  readonly flowStress?: FlowStressChoice | undefined;
  /** By default the larger of 1/designFactor and 1.25. */
  readonly safetyFactor?: number | undefined;
  readonly designFactor?: number | undefined;
}

/** A method inside its limits. The API 579-1 methods reduce the working pressure and know no failure pressure. */
export interface MethodInside {
  readonly method: RemainingStrengthMethod;
  readonly inside: true;
  readonly failurePressure?: GaugePressure;
  readonly safePressure: GaugePressure;
  readonly notes: readonly string[];
}

/** A method that cannot be used here, and why. */
export interface MethodOutside {
  readonly method: RemainingStrengthMethod;
  readonly inside: false;
  readonly because: string;
}

export type MethodResult = MethodInside | MethodOutside;

/** What the methods are run on: the input with its flow stress and safety factor settled. */
export interface RemainingStrengthJob {
  readonly input: RemainingStrengthInput;
  readonly recorder: Recorder | undefined;
  readonly flowStress: FlowStressChoice;
  readonly safetyFactor: number;
}

/** One method; a refusal for its limits is an answer here, bad input is not. */
export function assess(job: RemainingStrengthJob, method: RemainingStrengthMethod): MethodResult {
  try {
    return RUN[method](job, method);
  } catch (error) {
    if (!isCalculationError(error) || error.code === 'invalid-input') throw error;
    return out(method, error.message);
  }
}

const RUN: Readonly<
  Record<RemainingStrengthMethod, (job: RemainingStrengthJob, method: RemainingStrengthMethod) => MethodResult>
> = {
  'b31g-original': (job, method) => {
    const { outsideDiameter, wallThickness, defectDepth, defectLength } = job.input;
    const flowStress = flow(job, '1.1 yield');
    const input = { outsideDiameter, wallThickness, defectDepth, defectLength, flowStress };
    const note = 'depth below 0.1 of the wall: B31G asks for no action';
    return inside(
      job,
      method,
      step(job.recorder, 'pipe/b31g-original', b31gOriginal, input),
      b31gOriginalShallow(input) ? [note] : [],
    );
  },
  'modified-b31g': (job, method) => {
    const { outsideDiameter, wallThickness, defectDepth, defectLength } = job.input;
    const flowStress = flow(job, job.flowStress);
    const input = { outsideDiameter, wallThickness, defectDepth, defectLength, flowStress };
    return inside(job, method, step(job.recorder, 'pipe/modified-b31g', modifiedB31g, input), flowNotes(job));
  },
  'effective-area': (job, method) => {
    const { outsideDiameter, wallThickness, profile } = job.input;
    if (profile === undefined) return out(method, 'needs a depth profile');
    const input = { outsideDiameter, wallThickness, flowStress: flow(job, job.flowStress), profile };
    return inside(
      job,
      method,
      step(job.recorder, 'pipe/effective-area', effectiveArea, input).failurePressure,
      flowNotes(job),
    );
  },
  'dnv-single-defect': (job, method) => {
    const { outsideDiameter, wallThickness, defectDepth, defectLength, tensileStrength } = job.input;
    if (tensileStrength === undefined) return out(method, 'needs the tensile strength');
    const input = { outsideDiameter, wallThickness, defectDepth, defectLength, tensileStrength };
    const note = 'DNV-RP-F101 takes a further modelling factor of 0.9, as recalled, which is not in this safe pressure';
    return inside(job, method, step(job.recorder, 'pipe/dnv-single-defect', dnvSingleDefect, input), [note]);
  },
  'local-metal-loss': (job, method) => {
    const { outsideDiameter, wallThickness: t, defectDepth, defectLength, maximumPressure } = job.input;
    const { distanceToDiscontinuity } = job.input;
    const input = {
      insideDiameter: (outsideDiameter - 2 * t) as Length,
      correctedWall: t,
      workingPressure: maximumPressure,
      measuredMinimum: (t - defectDepth) as Length,
      defectLength,
    };
    const checked = distanceToDiscontinuity === undefined ? input : { ...input, distanceToDiscontinuity };
    const { reducedPressure, lengthParameter } = step(job.recorder, 'pipe/local-metal-loss', localMetalLoss, checked);
    return { method, inside: true, safePressure: reducedPressure, notes: shellNotes(job, lengthParameter) };
  },
  'local-metal-loss-profile': (job, method) => {
    const { outsideDiameter, wallThickness: t, profile, maximumPressure, distanceToDiscontinuity } = job.input;
    if (profile === undefined) return out(method, 'needs a depth profile');
    const input = {
      insideDiameter: (outsideDiameter - 2 * t) as Length,
      correctedWall: t,
      workingPressure: maximumPressure,
      profile: profile.map(({ position, depth }) => ({ position, wall: (t - depth) as Length })),
    };
    const checked = distanceToDiscontinuity === undefined ? input : { ...input, distanceToDiscontinuity };
    const { reducedPressure, lengthParameter } = step(
      job.recorder,
      'pipe/local-metal-loss-profile',
      localMetalLossProfile,
      checked,
    );
    return { method, inside: true, safePressure: reducedPressure, notes: shellNotes(job, lengthParameter) };
  },
};

/** The flow stress by the job's choice; never above the tensile strength, where that is known. */
function flow({ input, recorder }: RemainingStrengthJob, choice: FlowStressChoice): Stress {
  const { yieldStrength, tensileStrength } = input;
  const value =
    choice === '1.1 yield'
      ? step(recorder, 'pipe/flow-stress-multiple', flowStressMultiple, { yieldStrength })
      : choice === 'yield plus 69 MPa'
        ? step(recorder, 'pipe/flow-stress-offset', flowStressOffset, { yieldStrength })
        : step(recorder, 'pipe/flow-stress-mean', flowStressMean, {
            yieldStrength,
            tensileStrength: known(tensileStrength),
          });
  if (tensileStrength !== undefined && value > tensileStrength) {
    const constraint = `must be at most the tensile strength, ${tensileStrength} Pa`;
    refuse({ code: 'outside-validity', parameter: 'flow stress', value, unit: 'Pa', constraint, source: 'ASME B31G' });
  }
  return value;
}

function known(tensileStrength: Stress | undefined): Stress {
  if (tensileStrength !== undefined) return tensileStrength;
  const constraint = 'must be given for a flow stress between yield and tensile strength';
  return refuse({ code: 'outside-validity', parameter: 'tensileStrength', value: 'missing', unit: '', constraint });
}

function flowNotes({ input, flowStress }: RemainingStrengthJob): string[] {
  const beyond = flowStress === 'yield plus 69 MPa' && flowStressOffsetBeyondRange(input);
  return beyond ? ['yield plus 69 MPa is meant for yield strengths up to 483 MPa (X70)'] : [];
}

function shellNotes({ input }: RemainingStrengthJob, lengthParameter: number): string[] {
  const notes: string[] = [];
  if (input.distanceToDiscontinuity === undefined) {
    notes.push('no distance to the nearest structural discontinuity was given; it must be at least 1.8 sqrt(D_i t_c)');
  }
  if (foliasApi579BeyondRange({ lengthParameter }))
    notes.push('length parameter above 20: bulging factor held at its value there');
  return notes;
}

function inside(
  { input, recorder, safetyFactor }: RemainingStrengthJob,
  method: RemainingStrengthMethod,
  failurePressure: GaugePressure,
  notes: readonly string[],
): MethodInside {
  const { maximumPressure } = input;
  const safe = step(
    recorder,
    'pipe/safe-pressure',
    safePressure,
    { failurePressure, safetyFactor, maximumPressure },
    method,
  );
  return { method, inside: true, failurePressure, safePressure: safe, notes };
}

function out(method: RemainingStrengthMethod, because: string): MethodOutside {
  return { method, inside: false, because };
}

import { decide, nonNegative, oneOf, positive, type Recorder, refuse, step } from '../../formula/index.js';
import type { GaugePressure } from '../../quantity/index.js';
import { assessByMethod } from './assess-by-method.js';
import { damageSafetyFactor } from './damage-safety-factor.js';
import { checkPartWallDefect } from './part-wall-defect.js';
import {
  type FlowStressChoice,
  flowStressChoices,
  type MethodInside,
  type MethodResult,
  type RemainingStrengthInput,
  type RemainingStrengthJob,
  type RemainingStrengthMethod,
  remainingStrengthMethods,
} from './remaining-strength-methods.js';
import { checkSafetyFactor } from './safe-pressure.js';

export interface RemainingStrength {
  /** The method behind `safePressure`. */
  readonly method: RemainingStrengthMethod;
  readonly safePressure: GaugePressure;
  readonly failurePressure?: GaugePressure;
  readonly safetyFactor: number;
  readonly flowStress: FlowStressChoice;
  readonly notes: readonly string[];
  /** Every method, in the order of `remainingStrengthMethods`. */
  readonly methods: readonly MethodResult[];
}

/**
 * Safe pressure of a pipe with one axial metal loss by every method that is inside its limits: the named one, or the lowest.
 *
 * Depth, length and profile are those at the end of life. Not for cracks, dents, gouges, selective seam corrosion or brittle
 * pipe; the caller has refused those.
 *
 * @param input     pipe, loss, strengths, maximum pressure; method, flow stress and safety factor where the case names them
 * @param recorder  takes the steps of every method and the decision between them
 * @returns the governing method with its pressures, and every method with its pressure or the reason why it is out
 * @throws CalculationError `invalid-input`; `outside-validity` when the named method, or every method, is outside its limits
 */
export function remainingStrength(input: RemainingStrengthInput, recorder?: Recorder): RemainingStrength {
  check(input);
  const flowStress = input.flowStress ?? '1.1 SMYS';
  const safetyFactor = settleSafetyFactor(input, recorder);
  const job: RemainingStrengthJob = { input, recorder, flowStress, safetyFactor };
  const methods = remainingStrengthMethods.map((method) => assessByMethod(job, method));
  const chosen = input.method === undefined ? lowest(methods) : named(input.method, methods);
  explain(recorder, input.method, chosen, methods);
  const { method, safePressure, failurePressure, notes } = chosen;
  return failurePressure === undefined
    ? { method, safePressure, safetyFactor, flowStress, notes, methods }
    : { method, safePressure, failurePressure, safetyFactor, flowStress, notes, methods };
}

function lowest(methods: readonly MethodResult[]): MethodInside {
  let least: MethodInside | undefined;
  for (const result of methods) {
    if (result.inside && (least === undefined || result.safePressure < least.safePressure)) least = result;
  }
  return least ?? refuseMethod('lowest', methods);
}

function named(method: RemainingStrengthMethod, methods: readonly MethodResult[]): MethodInside {
  const result = methods.find((candidate) => candidate.method === method);
  return result?.inside === true ? result : refuseMethod(method, methods);
}

function refuseMethod(value: RemainingStrengthMethod | 'lowest', methods: readonly MethodResult[]): never {
  const reasons: string[] = [];
  for (const result of methods) {
    if (!result.inside && (value === 'lowest' || result.method === value)) {
      reasons.push(value === 'lowest' ? `${result.method}: ${result.because}` : result.because);
    }
  }
  const constraint = `must be inside the limits of the method: ${reasons.join('; ')}`;
  refuse({ code: 'outside-validity', parameter: 'method', value, unit: '', constraint });
}

function explain(
  recorder: Recorder | undefined,
  asked: RemainingStrengthMethod | undefined,
  chosen: MethodInside,
  methods: readonly MethodResult[],
): void {
  if (recorder === undefined) return;
  for (const result of methods) if (!result.inside) decide(recorder, `${result.method} left out`, result.because);
  const because = asked === undefined ? 'lowest safe pressure of the methods inside their limits' : 'named by the case';
  decide(recorder, `Remaining strength by ${chosen.method}`, because);
}

function check(input: RemainingStrengthInput): void {
  checkPartWallDefect(input, 1, '');
  positive(input.yieldStrength, 'yieldStrength', 'Pa');
  if (input.tensileStrength !== undefined) positive(input.tensileStrength, 'tensileStrength', 'Pa');
  nonNegative(input.maximumPressure, 'maximumPressure', 'Pa');
  if (input.method !== undefined) oneOf(input.method, remainingStrengthMethods, 'method');
  if (input.flowStress !== undefined) oneOf(input.flowStress, flowStressChoices, 'flowStress');
  if (input.safetyFactor !== undefined) checkSafetyFactor(input.safetyFactor);
  checkProfileAgainstDepth(input);
}

/** A profile that is deeper than the stated depth would make the methods answer for two different defects. */
function checkProfileAgainstDepth({ profile, defectDepth }: RemainingStrengthInput): void {
  const deeper = profile?.findIndex((point) => point.depth > defectDepth * (1 + 1e-9)) ?? -1;
  const point = profile?.[deeper];
  if (point === undefined) return;
  const constraint = `must be at most the depth of the defect, ${defectDepth} m`;
  const parameter = `profile[${deeper}].depth`;
  refuse({ code: 'invalid-input', parameter, value: point.depth, unit: 'm', constraint });
}

/** The stated factor, never below 1/F; without one the larger of 1/F and the least factor. */
function settleSafetyFactor(
  { safetyFactor, designFactor }: RemainingStrengthInput,
  recorder: Recorder | undefined,
): number {
  if (designFactor === undefined) {
    if (safetyFactor !== undefined) return safetyFactor;
    const constraint = 'must be given, or the design factor of the line, whose inverse it is';
    refuse({ code: 'invalid-input', parameter: 'safetyFactor', value: 'missing', unit: '', constraint });
  }
  const factors = safetyFactor === undefined ? { designFactor } : { designFactor, safetyFactor, leastFactor: 1 };
  return step(recorder, 'pipe/damage-safety-factor', damageSafetyFactor, factors);
}

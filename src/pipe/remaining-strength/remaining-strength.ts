import { decide, nonNegative, oneOf, positive, type Recorder, refuse, step } from '../../formula/index.js';
import type { GaugePressure } from '../../quantity/index.js';
import { assessAcross } from './assess-across.js';
import { assessByMethod } from './assess-by-method.js';
import { assessLeastWall, tooDeep } from './assess-least-wall.js';
import { checkProfile } from './check-profile.js';
import { damageSafetyFactor } from './damage-safety-factor.js';
import { checkPartWallDefect } from './part-wall-defect.js';
import {
  type FlowStressChoice,
  flowStressChoices,
  type MethodInside,
  type MethodResult,
  type RemainingStrengthCriterion,
  type RemainingStrengthInput,
  type RemainingStrengthJob,
  type RemainingStrengthMethod,
  remainingStrengthMethods,
} from './remaining-strength-methods.js';
import { checkSafetyFactor } from './safe-pressure.js';

/** The safe pressure of a pipe with a metal loss, and what every method says of it. */
export interface RemainingStrength {
  /** What `safePressure` comes from. */
  readonly method: RemainingStrengthCriterion;
  /** Safe pressure of the method that governs [Pa]. */
  readonly safePressure: GaugePressure;
  /**
   * The least that is predicted by what counts, or by any method where the named one predicts none; none for a loss so deep
   * that no method counts unasked.
   */
  readonly failurePressure?: GaugePressure;
  /** Factor on the failure pressure. */
  readonly safetyFactor: number;
  /** Flow stress that was taken. */
  readonly flowStress: FlowStressChoice;
  /** What the methods say beside their numbers. */
  readonly notes: readonly string[];
  /** Every method, in the order of `remainingStrengthCriteria`; the last only where the loss is too deep for them. */
  readonly methods: readonly MethodResult[];
}

/**
 * Safe pressure of a pipe with one axial metal loss: by the named method, or the lowest of those inside their limits, and
 * never above what the pipe carries along itself over the width of the loss.
 *
 * Over 0.8 of the wall, or with less than 1.3 mm left, no method counts: the pipe is as thin all round as at its thinnest, and
 * below 1.3 mm it carries nothing. Only a named DNV-RP-F101 answers there, to 0.85.
 *
 * Depth, length, width and profile are those at the end of life. Not for cracks, dents, gouges, selective seam corrosion or
 * brittle pipe; the caller has refused those.
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
  const leastWall = assessLeastWall(job);
  const byMethod = remainingStrengthMethods.map((each) => tooDeep(job, each) ?? assessByMethod(job, each));
  const hoop = leastWall === undefined ? byMethod : [...byMethod, leastWall];
  const across = assessAcross(job);
  const methods = leastWall === undefined ? [...byMethod, across] : [...byMethod, across, leastWall];
  const hoopChosen = input.method === undefined ? lowest(hoop) : named(input.method, byMethod);
  const chosen = across.safePressure < hoopChosen.safePressure ? across : hoopChosen;
  explain(recorder, input.method, chosen, methods);
  const { method, safePressure } = chosen;
  const notes = chosen === across ? [...across.notes, ...hoopChosen.notes] : chosen.notes;
  const failurePressure =
    leastWall === undefined ? leastFailure(hoopChosen, across, input.method, byMethod) : undefined;
  return failurePressure === undefined
    ? { method, safePressure, safetyFactor, flowStress, notes, methods }
    : { method, safePressure, failurePressure, safetyFactor, flowStress, notes, methods };
}

/** Of the named method and along the pipe; of every method where none is named, or the named one predicts none. */
function leastFailure(
  hoopChosen: MethodInside,
  across: MethodInside,
  asked: RemainingStrengthMethod | undefined,
  byMethod: readonly MethodResult[],
): GaugePressure | undefined {
  const alone = asked !== undefined && hoopChosen.failurePressure !== undefined;
  const hoop = alone ? [hoopChosen] : byMethod;
  let least: GaugePressure | undefined;
  for (const result of hoop) {
    if (!result.inside || result.failurePressure === undefined) continue;
    if (least === undefined || result.failurePressure < least) least = result.failurePressure;
  }
  // The axial direction alone says nothing of the hoop one.
  const along = across.failurePressure;
  return least !== undefined && along !== undefined && along < least ? along : least;
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
  const because =
    chosen.method !== asked
      ? 'lowest safe pressure of what counts here'
      : 'named by the case, and not above what the pipe carries along itself';
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
  if (input.defectWidth !== undefined) positive(input.defectWidth, 'defectWidth', 'm');
  if (input.distanceToAttachment !== undefined) nonNegative(input.distanceToAttachment, 'distanceToAttachment', 'm');
  checkProfile(input);
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

import { nonNegative, oneOf, positive, refuse } from '../../formula/index.js';
import { type Area, exactly, type Length, roundedDown, roundedUp, saidIn } from '../../quantity/index.js';
import { type AcceptanceReason, type AcceptanceVerdict, worstVerdict } from '../verdict.js';
import { type FindingFeature, type FindingLimit, type FindingMeasure, findingLimits } from './finding-limits.js';
import { wrinkleLimit } from './wrinkle-limit.js';

/** Something that an inspector saw, or heard at the tap test. */
export interface Finding {
  /** What was found. */
  readonly feature: FindingFeature;
  /** Its width. */
  readonly width?: Length | undefined;
  /** Height above, or depth below, the surface. */
  readonly height?: Length | undefined;
  /** Its area. */
  readonly area?: Area | undefined;
  /** Its radius. */
  readonly radius?: Length | undefined;
  /** Delamination: whether it reaches into the overlap at an end. */
  readonly atEnd?: boolean | undefined;
}

/** What was found, and the laminate that it was found on. */
export interface FindingsInput {
  /** What was found on the repair, one a row. */
  readonly findings: readonly Finding[];
  /** Thickness of the laminate [m]; some limits go by it. */
  readonly laminateThickness: Length;
  /** Thickness of the resin-rich layer at the surface; needed to judge a crack, a pit or a pinhole. */
  readonly resinRichThickness?: Length | undefined;
  /** Whether the defect goes, or will go within the life of the repair, through the wall. */
  readonly throughWall: boolean;
}

/** What the findings mean for the repair. */
export interface FindingsJudgement {
  /** The gravest verdict of all findings. */
  readonly verdict: AcceptanceVerdict;
  /** Each finding that is not accepted, with its limit. */
  readonly reasons: readonly AcceptanceReason[];
}

/**
 * What the findings of the visual inspection and the tap test mean for a repair: accept, hold, repair the repair, or reject,
 * with a reason for every limit that is broken.
 *
 * @param input.findings           what was found; an empty list says that all was inspected and nothing was found
 * @param input.laminateThickness  thickness of the laminate [m], > 0
 * @param input.resinRichThickness thickness of the resin-rich layer [m], >= 0
 * @param input.throughWall        whether the repair has to seal
 * @throws CalculationError `invalid-input` when a finding lacks the measure that its limit is set on
 * @see the limits are data, `findingLimits`, each with clause and evidence
 */
export function judgeFindings(input: FindingsInput): FindingsJudgement {
  positive(input.laminateThickness, 'laminateThickness', 'm');
  if (input.resinRichThickness !== undefined) nonNegative(input.resinRichThickness, 'resinRichThickness', 'm');
  const features = findingLimits.map(({ feature }) => feature);
  const reasons = input.findings.flatMap((finding, index) => {
    oneOf(finding.feature, features, `findings[${index}].feature`);
    return findingLimits
      .filter(({ feature }) => feature === finding.feature)
      .flatMap((limit) => judged(finding, limit, input, `findings[${index}]`));
  });
  return { verdict: worstVerdict(reasons), reasons };
}

function judged(finding: Finding, limit: FindingLimit, input: FindingsInput, path: string): AcceptanceReason[] {
  const { width, area } = limit.greatest;
  const reasons: AcceptanceReason[] = [];
  const above = (measure: FindingMeasure, greatest: number): void => {
    const value = measured(finding, measure, path);
    if (!withinLimit(value, greatest)) reasons.push(broken(limit, measure, value, greatest));
  };
  if (width !== undefined) above('width', width);
  const heights = heightLimits(limit, input);
  if (heights.length > 0) above('height', Math.min(...heights));
  if (area !== undefined) {
    const atEnd = finding.atEnd ?? missing(`${path}.atEnd`, `a ${finding.feature} is judged by where it lies`);
    above('area', atEnd || input.throughWall ? 0 : area);
  }
  if (limit.leastRadius !== undefined) {
    const value = measured(finding, 'radius', path);
    if (!withinLimit(limit.leastRadius, value)) reasons.push(broken(limit, 'radius', value, limit.leastRadius));
  }
  if (Object.keys(limit.greatest).length === 0 && limit.leastRadius === undefined) reasons.push(stands(limit));
  return reasons;
}

/** A finding of exactly the limit passes, whichever way its unit rounds. */
function withinLimit(value: number, greatest: number): boolean {
  return value <= greatest * (1 + 1e-9);
}

function heightLimits({ feature, greatest }: FindingLimit, input: FindingsInput): number[] {
  const { height, withinResinRichLayer } = greatest;
  const limits: number[] = [];
  if (height === 'wrinkle') limits.push(wrinkleLimit({ laminateThickness: input.laminateThickness }));
  else if (height !== undefined) limits.push(height);
  if (withinResinRichLayer === true)
    limits.push(input.resinRichThickness ?? missing('resinRichThickness', `a ${feature} is judged by it`));
  return limits;
}

function measured(finding: Finding, measure: FindingMeasure, path: string): number {
  const value = finding[measure] ?? missing(`${path}.${measure}`, `a ${finding.feature} is judged by it`);
  nonNegative(value, `${path}.${measure}`, measure === 'area' ? 'm2' : 'm');
  return value;
}

function missing(parameter: string, why: string): never {
  refuse({ code: 'invalid-input', parameter, value: 'missing', unit: '', constraint: `must be given: ${why}` });
}

function stands({ feature, where, limit, beyond, remedy, clause }: FindingLimit): AcceptanceReason {
  const holdPoint = where === 'bond line' ? 'bond' : 'surface';
  return { holdPoint, verdict: beyond, ...saidIn(limit, (text) => `${feature}: ${text} passes; ${remedy}`), clause };
}

function broken(limit: FindingLimit, measure: FindingMeasure, value: number, bound: number): AcceptanceReason {
  const kind = measure === 'area' ? 'area' : 'length';
  const name = `${measure} of the ${limit.feature}`;
  return {
    ...stands(limit),
    found: exactly(name, kind, value),
    limit:
      measure === 'radius' ? roundedUp('least radius', kind, bound) : roundedDown(`greatest ${measure}`, kind, bound),
  };
}

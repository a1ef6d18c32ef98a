import { nonNegative, oneOf, positive } from '../formula/index.js';
import { exactly, roundedDown, roundedUp } from '../quantity/index.js';
import type { AcceptanceDecision, AcceptanceRecord, InspectionRecord } from './acceptance-record.js';
import { judgeFindings } from './findings/judge-findings.js';
import { tapTest } from './findings/tap-test.js';
import { hardnessGate } from './hardness/hardness-gate.js';
import { type AcceptanceReason, type HoldPoint, worstVerdict } from './verdict.js';

const holdPoints: readonly HoldPoint[] = ['hardness', 'surface', 'bond', 'dimensions', 'pressure test'];

/**
 * Whether a repair may go back to service: accept, hold, repair the repair, or reject, with each reason.
 *
 * It accepts only when every hold point was measured and passed; the worst hold point decides.
 *
 * @param record what was measured on the finished repair
 * @throws CalculationError `invalid-input` for numbers that can never be right, or a finding without its measure
 */
export function acceptRepair(record: AcceptanceRecord): AcceptanceDecision {
  positive(record.laminateThickness, 'laminateThickness', 'm');
  const reasons = [
    ...hardnessReasons(record),
    ...inspectionReasons(record),
    ...dimensionReasons(record),
    ...pressureReasons(record),
  ];
  return {
    verdict: worstVerdict(reasons),
    holdPoints: holdPoints.map((holdPoint) => ({
      holdPoint,
      verdict: worstVerdict(reasons.filter((reason) => reason.holdPoint === holdPoint)),
    })),
    reasons,
  };
}

function hardnessReasons({ hardness }: AcceptanceRecord): AcceptanceReason[] {
  const holdPoint = 'hardness';
  if (hardness === undefined) return [hold(holdPoint, 'Hardness was not measured.')];
  if (hardness.qualifiedHardness === undefined) {
    const text =
      'The qualified hardness is not known, and nothing is accepted without it: ask the maker of the system.';
    return [hold(holdPoint, text)];
  }
  const { leastMean = 0.9, leastSingle = 0.8, hasStopped } = hardness;
  const { count, readingsNeeded, fraction, leastFraction } = hardnessGate(hardness);
  const clause = 'cure acceptance (ISO 24817, ASME PCC-2)';
  const reasons: AcceptanceReason[] = [];
  if (count < readingsNeeded) {
    const found = exactly('readings', 'count', count);
    const limit = roundedUp('readings needed', 'count', readingsNeeded);
    reasons.push({ ...hold(holdPoint, 'Too few hardness readings: take more.'), found, limit });
  }
  const slack = 1 - 1e-9;
  if (fraction < leastMean * slack) {
    const text = hasStopped
      ? 'The laminate is too soft and no longer hardens: remove the repair, unless a heating that the maker names brings it up.'
      : 'The laminate is not hard enough yet: let it cure on, or warm it as the maker allows, and measure again.';
    const found = exactly('mean hardness over the qualified value', 'ratio', fraction);
    const limit = roundedUp('least mean', 'ratio', leastMean);
    reasons.push({ holdPoint, verdict: hasStopped ? 'reject' : 'hold', text, found, limit, clause });
  }
  if (leastFraction < leastSingle * slack) {
    const text = hasStopped
      ? "A place stays soft: cut it out and lay it anew, with the owner's agreement."
      : 'A place is too soft: measure round it, let it cure on and measure again.';
    const found = exactly('lowest reading over the qualified value', 'ratio', leastFraction);
    const limit = roundedUp('least reading', 'ratio', leastSingle);
    reasons.push({ holdPoint, verdict: hasStopped ? 'repair the repair' : 'hold', text, found, limit });
  }
  return reasons;
}

function inspectionReasons({ inspection, laminateThickness, throughWall }: AcceptanceRecord): AcceptanceReason[] {
  if (inspection === undefined) {
    return [hold('surface', 'The surface was not inspected.'), hold('bond', 'The bond was not inspected.')];
  }
  const { findings, resinRichThickness, bondMethods } = inspection;
  const reasons = [...judgeFindings({ findings, laminateThickness, resinRichThickness, throughWall }).reasons];
  for (const method of bondMethods) {
    oneOf(method, ['tap test', 'ultrasonic', 'thermography', 'other'], 'inspection.bondMethods');
  }
  if (bondMethods.length === 0) reasons.push(hold('bond', 'The bond was not inspected.'));
  else if (needsSecondMethod(bondMethods) && laminateThickness > tapTest.thickestAlone) {
    reasons.push({
      ...hold(
        'bond',
        'The laminate is too thick for the tap test, or a method that is not named, to stand alone: a second method has to confirm the bond.',
      ),
      found: exactly('laminate thickness', 'length', laminateThickness),
      limit: roundedDown('thickest laminate for the tap test alone', 'length', tapTest.thickestAlone),
      clause: tapTest.clause,
    });
  }
  return reasons;
}

/** A method stated twice is one method, and one that is not named is known to see no more than the tap test. */
function needsSecondMethod(methods: InspectionRecord['bondMethods']): boolean {
  if (methods.includes('ultrasonic') || methods.includes('thermography')) return false;
  return new Set(methods).size === 1;
}

function dimensionReasons({ dimensions, laminateThickness }: AcceptanceRecord): AcceptanceReason[] {
  const holdPoint = 'dimensions';
  if (dimensions === undefined) return [hold(holdPoint, 'Thickness and overlap were not compared with the design.')];
  const { requiredThickness, leastOverlap, requiredOverlap } = dimensions;
  positive(requiredThickness, 'dimensions.requiredThickness', 'm');
  nonNegative(leastOverlap, 'dimensions.leastOverlap', 'm');
  nonNegative(requiredOverlap, 'dimensions.requiredOverlap', 'm');
  const verdict = 'repair the repair';
  const reasons: AcceptanceReason[] = [];
  if (laminateThickness < requiredThickness) {
    const text = 'The laminate is thinner than designed: abrade it and lay more plies, or rate the line down.';
    const found = exactly('laminate thickness', 'length', laminateThickness);
    const limit = roundedUp('required thickness', 'length', requiredThickness);
    reasons.push({ holdPoint, verdict, text, found, limit });
  }
  if (leastOverlap < requiredOverlap) {
    const text = 'The overlap is shorter than designed: prepare more surface and wrap on.';
    const found = exactly('overlap', 'length', leastOverlap);
    const limit = roundedUp('required overlap', 'length', requiredOverlap);
    reasons.push({ holdPoint, verdict, text, found, limit });
  }
  return reasons;
}

function pressureReasons({ pressureTest: test }: AcceptanceRecord): AcceptanceReason[] {
  const holdPoint = 'pressure test';
  if (test === 'not required') return [];
  if (test === undefined) return [hold(holdPoint, 'The pressure test was not made.')];
  nonNegative(test.requiredPressure, 'pressureTest.requiredPressure', 'Pa');
  nonNegative(test.lowestPressure, 'pressureTest.lowestPressure', 'Pa');
  nonNegative(test.requiredHold, 'pressureTest.requiredHold', 's');
  nonNegative(test.hold, 'pressureTest.hold', 's');
  oneOf(test.leak, ['none', 'at the repair', 'elsewhere'], 'pressureTest.leak');
  oneOf(test.fall, ['none', 'only cooling', 'undecided', 'leak'], 'pressureTest.fall');
  const reasons: AcceptanceReason[] = [];
  if (test.leak === 'at the repair') {
    const text = 'The repair leaks under test: release the pressure and remove the repair.';
    reasons.push({ holdPoint, verdict: 'reject', text });
  }
  if (test.leak === 'elsewhere') reasons.push(hold(holdPoint, 'The line leaks elsewhere: mend that and test again.'));
  if (test.fall === 'leak' && test.leak === 'none')
    reasons.push(hold(holdPoint, 'Water was lost and no leak was seen: find it and test again.'));
  if (test.fall === 'undecided')
    reasons.push(
      hold(holdPoint, 'The fall of pressure may be cooling or a leak: hold until the temperature stands still.'),
    );
  if (test.lowestPressure < test.requiredPressure) {
    const found = exactly('lowest pressure', 'gauge pressure', test.lowestPressure);
    const limit = roundedUp('test pressure', 'gauge pressure', test.requiredPressure);
    reasons.push({
      ...hold(holdPoint, 'The test pressure was not kept: pump up and begin the hold anew.'),
      found,
      limit,
    });
  }
  if (test.hold < test.requiredHold) {
    const found = exactly('hold', 'time', test.hold);
    const limit = roundedUp('hold required', 'time', test.requiredHold);
    reasons.push({ ...hold(holdPoint, 'The hold was too short: begin it anew.'), found, limit });
  }
  return reasons;
}

function hold(holdPoint: HoldPoint, text: string): AcceptanceReason & { readonly verdict: 'hold' } {
  return { holdPoint, verdict: 'hold', text };
}

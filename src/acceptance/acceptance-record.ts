import type { GaugePressure, Length, Time } from '../quantity/index.js';
import type { Finding } from './findings/judge-findings.js';
import type { HardnessGateInput } from './hardness/hardness-gate.js';
import type { PressureFallVerdict } from './pressure-test/pressure-fall.js';
import type { AcceptanceReason, AcceptanceVerdict, HoldPoint } from './verdict.js';

export interface HardnessRecord extends HardnessGateInput {
  /** Whether the hardness no longer rises from one look to the next: then waiting does not help. */
  readonly hasStopped: boolean;
}

export interface InspectionRecord {
  /** What was seen and heard; an empty list says that all was inspected and nothing was found. */
  readonly findings: readonly Finding[];
  readonly resinRichThickness?: Length | undefined;
  readonly bondMethods: readonly ('tap test' | 'ultrasonic' | 'thermography' | 'other')[];
}

export interface DimensionsRecord {
  readonly requiredThickness: Length;
  /** The lesser of the overlaps at both ends, on prepared surface. */
  readonly leastOverlap: Length;
  readonly requiredOverlap: Length;
}

export interface PressureTestRecord {
  readonly requiredPressure: GaugePressure;
  /** Lowest pressure during the hold. */
  readonly lowestPressure: GaugePressure;
  readonly requiredHold: Time;
  readonly hold: Time;
  readonly leak: 'none' | 'at the repair' | 'elsewhere';
  readonly fall: 'none' | PressureFallVerdict;
}

/** What was measured on the finished repair. What is left out is not yet done, and holds the repair. */
export interface AcceptanceRecord {
  /** Least measured thickness of the laminate. */
  readonly laminateThickness: Length;
  readonly throughWall: boolean;
  readonly hardness?: HardnessRecord | undefined;
  readonly inspection?: InspectionRecord | undefined;
  readonly dimensions?: DimensionsRecord | undefined;
  readonly pressureTest?: PressureTestRecord | 'not required' | undefined;
}

export interface AcceptanceDecision {
  readonly verdict: AcceptanceVerdict;
  readonly holdPoints: readonly { readonly holdPoint: HoldPoint; readonly verdict: AcceptanceVerdict }[];
  readonly reasons: readonly AcceptanceReason[];
}
